import { type DiseaseRow, diseases } from '@sorrel/almanac/diseases';
import { findAnyPlant } from '@sorrel/almanac/half-known-plants';
import type { Ph } from '../units/si.ts';

export type { DiseaseRow } from '@sorrel/almanac/diseases';

/** The disease a key or a name means, e.g. `clubroot`, `common scab`. */
export function findDisease(text: string): DiseaseRow | undefined {
  const wanted = plain(text);
  return (
    diseases.find((row) => row.key === wanted || plain(row.name) === wanted) ??
    diseases.find((row) => wanted === ALSO[row.key])
  );
}

const ALSO: Readonly<Record<string, string>> = { 'common-scab': 'scab', 'take-all-patch': 'take-all' };
const plain = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, '-');

/** Whether a plant, by its name or key, catches a disease. */
export function isHost(disease: DiseaseRow, plant: string): boolean {
  const row = findAnyPlant(plant);
  const names = [plant, row?.name ?? '', row?.key ?? '', row?.botanical ?? ''].join(' ').toLowerCase();
  return disease.hosts.some((host) =>
    host.startsWith('family:') ? row?.family === host.slice('family:'.length) : names.includes(host),
  );
}

/** Diseases of the almanac that a plant catches. */
export const diseasesOf = (plant: string): readonly DiseaseRow[] => diseases.filter((row) => isHost(row, plant));

export type DiseaseRisk =
  | { readonly kind: 'favoured' }
  /** On the safe side of the published limit; `words` says how far that can be trusted. */
  | { readonly kind: 'quietened'; readonly words: string }
  /** Worst in the middle: how near a pH lies to the worst, 0 to 1. */
  | { readonly kind: 'hump'; readonly share: number }
  /** The pH says nothing usable. */
  | { readonly kind: 'no limit' };

/**
 * What a pH does to a disease. Never a promise: each row says how reliable its limit is.
 *
 * @param ph in water, 0 to 14
 * @throws RangeError outside 0 to 14
 * @source the row's own
 */
export function diseaseRisk(disease: DiseaseRow, ph: Ph): DiseaseRisk {
  if (!(ph >= 0 && ph <= 14)) throw new RangeError(`pH must lie between 0 and 14, got ${ph}`);
  const { keepAbove, keepBelow, worse, quietened } = disease;
  if (worse === 'hump') return { kind: 'hump', share: hump(disease, ph) };
  const quiet = { kind: 'quietened', words: quietened ?? 'less likely' } as const;
  if (keepAbove !== undefined) return ph >= keepAbove ? quiet : { kind: 'favoured' };
  if (keepBelow !== undefined) return ph <= keepBelow ? quiet : { kind: 'favoured' };
  return { kind: 'no limit' };
}

function hump({ trialLow = 0, trialPeak = 7, trialHigh = 14 }: DiseaseRow, ph: Ph): number {
  const side = ph <= trialPeak ? (ph - trialLow) / (trialPeak - trialLow) : (trialHigh - ph) / (trialHigh - trialPeak);
  return Math.min(1, Math.max(0, side));
}

/** Which way a disease goes when the pH moves; `no link` when the publications give no direction. */
export function diseaseTrend(disease: DiseaseRow, from: Ph, to: Ph): 'falls' | 'rises' | 'stays' | 'no link' {
  const { worse } = disease;
  if (worse === 'none') return 'no link';
  if (from === to) return 'stays';
  if (worse === 'hump') {
    const change = hump(disease, to) - hump(disease, from);
    return change === 0 ? 'stays' : change > 0 ? 'rises' : 'falls';
  }
  return (worse === 'sour') === to > from ? 'falls' : 'rises';
}

/** Of the pH a trial tested, those with most and with least of a disease; undefined without a direction. */
export function worstAndLeast(
  disease: DiseaseRow,
  tested: readonly Ph[],
): { readonly highest: readonly Ph[]; readonly lowest: readonly Ph[] } | undefined {
  const { worse } = disease;
  if (worse === 'none' || tested.length === 0) return undefined;
  const score = (ph: Ph) => (worse === 'hump' ? hump(disease, ph) : worse === 'sour' ? -ph : ph);
  const scores = tested.map(score);
  const [most, least] = [Math.max(...scores), Math.min(...scores)];
  const having = (wanted: number) => tested.filter((_, index) => scores[index] === wanted);
  return { highest: having(most), lowest: having(least) };
}
