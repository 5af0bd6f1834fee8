import { type Row, rows } from './generated/ptf.ts';

export type PedotransferRow = Row;
/** Buffer capacity from organic carbon and clay. */
export const pedotransferFunctions: readonly PedotransferRow[] = rows;
