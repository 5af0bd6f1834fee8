/** The nutrients whose usability the almanac follows along the pH scale. */
export const NUTRIENTS = ['N', 'P', 'K', 'S', 'Ca', 'Mg', 'Fe', 'Mn', 'B', 'Cu', 'Zn', 'Mo'] as const;
export type Nutrient = (typeof NUTRIENTS)[number];

/** What rises to harm outside the middle of the scale. */
export const DANGERS = ['aluminium-toxicity', 'manganese-toxicity', 'sodium-hazard'] as const;
export type Danger = (typeof DANGERS)[number];

export const NUTRIENT_NAMES: Readonly<Record<Nutrient, string>> = {
  N: 'nitrogen',
  P: 'phosphorus',
  K: 'potassium',
  S: 'sulfur',
  Ca: 'calcium',
  Mg: 'magnesium',
  Fe: 'iron',
  Mn: 'manganese',
  B: 'boron',
  Cu: 'copper',
  Zn: 'zinc',
  Mo: 'molybdenum',
};

const LOCKABLE: ReadonlySet<string> = new Set(['P', 'Fe', 'Mn', 'B', 'Cu', 'Zn', 'Mo']);
/** Whether a pH can hold back what is there; the others are lost from sour soil, not locked in it (cimmyt-availability). */
export const isLockable = (nutrient: string): boolean => LOCKABLE.has(nutrient);

const byName = new Map<string, Nutrient>(
  NUTRIENTS.flatMap((symbol) => [
    [symbol.toLowerCase(), symbol],
    [NUTRIENT_NAMES[symbol], symbol],
  ]),
);

/** The nutrient a word or a symbol means, e.g. `P`, `iron`; undefined when it is none of ours. */
export const nutrientOf = (text: string): Nutrient | undefined =>
  byName.get(text.trim().toLowerCase().replace('sulphur', 'sulfur'));

/** A nutrient as the middle of a sentence names it; forms of nitrogen and salts keep their own name. */
export const nutrientName = (symbol: string): string => {
  if (symbol === 'NO3-N') return 'nitrate nitrogen';
  if (symbol === 'NH4-N') return 'ammonium nitrogen';
  const nutrient = nutrientOf(symbol);
  return nutrient === undefined ? symbol : NUTRIENT_NAMES[nutrient];
};
