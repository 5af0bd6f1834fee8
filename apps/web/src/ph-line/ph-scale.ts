/** What one row of the pH line shows. */
export interface PhMarks {
  readonly present?: { readonly mean: number; readonly sd: number } | undefined;
  readonly low: number;
  readonly high: number;
  /** Where the plan leads; undefined when nothing is to be changed. */
  readonly aim?: number | undefined;
}

/** A stretch of the pH axis, drawn as shares of its width so that it needs no measuring. */
export interface PhScale {
  readonly low: number;
  readonly high: number;
  /** Whole pH values, for the grid. */
  readonly ticks: readonly number[];
  /** Share of the width, in percent; values off the axis stop at its ends. */
  at(ph: number): number;
}

/** Middle 95 %, 80 % and 50 % of where the pH may be: the smear is darker toward the middle. Normal distribution. */
const SMEARS = [
  { share: 0.95, z: 1.96 },
  { share: 0.8, z: 1.2816 },
  { share: 0.5, z: 0.6745 },
] as const;

/** One axis for all rows: whole numbers, 4 to 8 at least, wider when a row lies outside. */
export function phScale(rows: readonly PhMarks[]): PhScale {
  const values = rows.flatMap(({ present, low, high, aim }) => [
    low,
    high,
    ...(present === undefined ? [] : [present.mean]),
    ...(aim === undefined ? [] : [aim]),
  ]);
  const low = Math.max(0, Math.floor(Math.min(4, ...values)));
  const high = Math.min(14, Math.ceil(Math.max(8, ...values)));
  const ticks = Array.from({ length: high - low + 1 }, (_, i) => low + i);
  return {
    low,
    high,
    ticks,
    at: (ph) => (Math.min(high, Math.max(low, ph)) - low) * (100 / (high - low)),
  };
}

export interface Stretch {
  readonly from: number;
  readonly width: number;
}

const stretch = (scale: PhScale, low: number, high: number): Stretch => {
  const from = scale.at(low);
  return { from, width: scale.at(high) - from };
};

export interface RowGeometry {
  /** Widest first. */
  readonly smears: readonly (Stretch & { readonly share: number })[];
  readonly mark: number | undefined;
  /** Undefined for an impossible range, such as plants that share no pH. */
  readonly wanted: Stretch | undefined;
  readonly arrow: { readonly from: number; readonly to: number; readonly way: 'right' | 'left' } | undefined;
}

/** Where everything of a row stands, in percent of the axis. */
export function rowGeometry({ present, low, high, aim }: PhMarks, scale: PhScale): RowGeometry {
  const mark = present === undefined ? undefined : scale.at(present.mean);
  const to = aim === undefined ? undefined : scale.at(aim);
  return {
    smears:
      present === undefined
        ? []
        : SMEARS.map(({ share, z }) => ({
            share,
            ...stretch(scale, present.mean - z * present.sd, present.mean + z * present.sd),
          })),
    mark,
    wanted: low < high ? stretch(scale, low, high) : undefined,
    arrow:
      mark === undefined || to === undefined || mark === to
        ? undefined
        : { from: mark, to, way: to > mark ? 'right' : 'left' },
  };
}
