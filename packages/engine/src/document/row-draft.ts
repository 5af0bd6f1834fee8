import type { BufferMethod, PhMethod, SoilTest, TextureClass } from '../evidence/soil-test.ts';
import type { Place } from '../plan/place.ts';
import type { IsoDate, Metre } from '../units/si.ts';

export type Mutable<T> = { -readonly [K in keyof T]: T[K] };

/** What a table leaves out and its reader says. */
export interface RowDefaults {
  readonly today: IsoDate;
  readonly region?: string;
}

/** A row on its way to a place: what belongs together only when the row is complete. */
export interface Draft {
  readonly place: Mutable<Place>;
  readonly test: Mutable<SoilTest>;
  depth?: Metre;
  testDepth?: Metre;
  areaGiven?: boolean;
  ph?: number;
  phMethod?: PhMethod;
  buffer?: number;
  bufferMethod?: BufferMethod;
  target?: number;
  targetLow?: number;
  targetHigh?: number;
  texture?: TextureClass;
  sand?: number;
  silt?: number;
  clay?: number;
  alkalinity?: number;
  printedRate?: number;
  printedDepth?: Metre;
  printedTarget?: number;
  printedCce?: number;
}

export function startDraft(row: number, defaults: RowDefaults): Draft {
  const id = `row-${row}`;
  const test: Mutable<SoilTest> = { id: `${id}-test`, date: defaults.today, instrument: 'laboratory', depth: 0.15 };
  if (defaults.region !== undefined) test.region = defaults.region;
  return {
    test,
    place: {
      id,
      name: id,
      kind: 'bed',
      situation: 'open ground',
      medium: 'mineral',
      area: 1,
      depth: 0.15,
      plants: [],
      tests: [test],
      applications: [],
    },
  };
}
