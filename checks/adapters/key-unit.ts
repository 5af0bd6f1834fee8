import { readUnit, type Unit } from '../../packages/engine/src/units/index.ts';

/** What a key of a published case says about its figure: `Ca_mg_kg` is Ca in mg/kg, `depth_in` a depth in inches. */
export interface KeyUnit {
  readonly unit: Unit;
  /** Chemical form the figure counts, as the almanac writes it. */
  readonly subject?: string;
  /** Words that say what the figure is and not its unit. */
  readonly words: readonly string[];
}

// Case tells Mg from mg; only forms of three signs and more are also known in small letters.
const subjects = new Map(
  ['P', 'K', 'Ca', 'Mg', 'Na', 'Al', 'H', 'N', 'S', 'Fe', 'Mn', 'Zn']
    .concat(['P2O5', 'K2O', 'CaO', 'MgO', 'Na2O', 'SO3', 'SO4', 'NO3', 'NH4', 'PO4'])
    .concat(['CaCO3', 'HCO3', 'MgCO3', 'Ca(OH)2', 'CaMg(CO3)2'])
    .flatMap((form) => [form, ...(form.length > 2 ? [form.toLowerCase()] : [])].map((name) => [name, form] as const)),
);
const neutral = new Set(
  'rate soil depth area volume temp temperature ec density bulk alkalinity alk printed exact value eq of as'.split(' '),
);

/** The unit some words of a key name, with `per` or without: `lb per acre`, `g m2`, `sq yd`. */
function unitOfWords(words: readonly string[]): Unit | undefined {
  const texts = [words.join(' ')];
  if (!words.includes('per'))
    for (let cut = 1; cut < words.length; cut++)
      texts.push(`${words.slice(0, cut).join(' ')}/${words.slice(cut).join(' ')}`);
  for (const text of texts) {
    const reading = readUnit(text);
    if (reading.state === 'unit') return reading.unit;
  }
  return undefined;
}

/**
 * Reads a key as words joined by `_`: neutral words, at most one chemical form, and a unit.
 *
 * @returns undefined when a word is none of these, so that a figure is never taken for what it is not
 */
export function readKey(key: string): KeyUnit | undefined {
  const words: string[] = [];
  const all = key.split('_').filter((word) => word !== '');
  let rest = all.filter((word) => !neutral.has(word.toLowerCase()) || !words.push(word.toLowerCase()));
  if (rest.length === 0 && words.includes('density')) rest = ['g', 'cm3'];
  for (const [at, word] of rest.entries()) {
    const subject = subjects.get(word);
    if (subject === undefined) continue;
    const others = rest.filter((_, index) => index !== at);
    // Water tables head a column "CaCO3" or "HCO3" and mean mg/L.
    const unit = unitOfWords(others.length === 0 && /CO3$/.test(subject) ? ['mg', 'L'] : others);
    // Mg_ha is a megagram for a hectare, not magnesium in hectares.
    if (unit !== undefined && unit.kind !== 'area') return { unit, subject, words };
  }
  const unit = unitOfWords(all) ?? unitOfWords(rest);
  return unit === undefined ? undefined : { unit, words };
}

/** A number, or a list of numbers, as figures in a row. */
export function figures(value: unknown): readonly number[] | undefined {
  const list = Array.isArray(value) ? value : [value];
  return list.length > 0 && list.every((one) => typeof one === 'number') ? list : undefined;
}
