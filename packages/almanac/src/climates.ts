import { type Row, rows } from './generated/climates.ts';

export type ClimateRow = Row;
export const climateRows: readonly ClimateRow[] = rows;

export interface TypicalClimate {
  readonly name: string;
  readonly hemisphere: 'north' | 'south';
  /** Degrees, south negative. */
  readonly latitude: number;
  /** Monthly mean air temperature, January first, °C. */
  readonly air: readonly number[];
  /** Monthly rain, January first, m. */
  readonly rain: readonly number[];
  /** Monthly mean soil temperature at 10 cm, °C, where the reference gives it. */
  readonly soil?: readonly number[];
}

const months = (row: Row): number[] => [
  row.jan,
  row.feb,
  row.mar,
  row.apr,
  row.may,
  row.jun,
  row.jul,
  row.aug,
  row.sep,
  row.oct,
  row.nov,
  row.dec,
];

/** The almanac's typical climates. All of them are from memory: somebody's own weather figures are better. */
export const climates: readonly TypicalClimate[] = [...new Set(rows.map((row) => row.climate))].flatMap((name) => {
  const of = (quantity: Row['quantity']) => rows.find((row) => row.climate === name && row.quantity === quantity);
  const air = of('air');
  const rain = of('rain');
  const soil = of('soil');
  if (air === undefined || rain === undefined) return [];
  const { hemisphere, latitude } = air;
  const base = { name, hemisphere, latitude, air: months(air), rain: months(rain).map((mm) => mm / 1000) };
  return [soil === undefined ? base : { ...base, soil: months(soil) }];
});
