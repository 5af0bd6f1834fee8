import { type Row, rows } from './generated/buffer-temperature.ts';

export type BufferTemperatureRow = Row;

/** True pH of calibration buffers by temperature in degrees Celsius. */
export const bufferTemperature: readonly BufferTemperatureRow[] = rows;
