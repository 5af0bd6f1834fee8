/** What a key such as `S_lb_per_1000_sqft_low` or `lb_S_per_acre` asks for. */
export interface RateKey {
  /** kg/m² in one of its unit. */
  readonly factor: number;
  readonly end: 'low' | 'high' | undefined;
  /** False for keys like `lb_per_10_sqft`, which name no sulfur. */
  readonly sulfur: boolean;
}

const MASS: Readonly<Record<string, number>> = {
  kg: 1,
  g: 1e-3,
  lb: 0.45359237,
  oz: 0.45359237 / 16,
  t: 1000,
  short_ton: 907.18474,
};
const SQUARE_FOOT = 0.09290304;
const AREA: Readonly<Record<string, number>> = {
  acre: 43560 * SQUARE_FOOT,
  ha: 1e4,
  m2: 1,
  sqft: SQUARE_FOOT,
  sqyd: 9 * SQUARE_FOOT,
};

const PATTERN =
  /^(s_)?(?:need_)?(kg|g|lb|oz|t|short_ton)(_s)?_(?:per_)?(\d*)_?(acre|ha|m2|sq_?ft|sq_?yd)(?:_(low|high|mid))?$/;

/** Reads a rate key; undefined for any other key. */
export function rateKey(key: string): RateKey | undefined {
  const match = PATTERN.exec(key.toLowerCase());
  if (match === null) return undefined;
  const [, before, mass = '', after, count = '', area = '', end] = match;
  return {
    factor: (MASS[mass] as number) / ((AREA[area.replace('_', '')] as number) * (count === '' ? 1 : Number(count))),
    end: end === 'low' || end === 'high' ? end : undefined,
    sulfur: before !== undefined || after !== undefined,
  };
}

/** Reads a unit as printed, e.g. `lb/acre` or `lb/100 sq ft`; kg/m² in one of it. */
export function rateUnitFactor(unit: string): number | undefined {
  return rateKey(unit.trim().replace('/', '_per_').replace(/\s+/g, '_'))?.factor;
}
