import { type IndicatorPlantRow, indicatorPlants } from '@sorrel/almanac/indicator-plants';
import type { Message } from '../derivation/message.ts';

/** How far a stand of weeds leans, never more than a hint: no dose ever rests on it. */
export interface WeedEvidence {
  readonly lean: 'sour' | 'sweet' | 'nothing';
  readonly strength: 'none' | 'weak' | 'fair';
  readonly known: readonly IndicatorPlantRow[];
  readonly unknown: readonly string[];
  readonly messages: readonly Message[];
  readonly sources: readonly string[];
}

/** The weed a name means: key, common or botanical name, singular or plural. */
export function findWeed(text: string): IndicatorPlantRow | undefined {
  const wanted = plain(text);
  return indicatorPlants.find((row) =>
    [row.key, row.name, row.botanical ?? ''].some((name) => name !== '' && plain(name) === wanted),
  );
}

const plain = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, '-')
    .replace(/s$/, '');

/** Species of the sour stand that must grow together before they are a fair hint; own rule on growing-food. */
const A_STAND = 3;

/**
 * What the weeds of a place say of its pH. One species says next to nothing: records show most of them over three or
 * four pH units, and even whole communities explain 36 to 49 % of the measured pH (ellenberg-sk). Only several plants
 * of the heath together are a fair hint. The answer is always to test first.
 *
 * @param names weeds seen growing in number
 * @source fao-crop-db, usda-plants-char, growing-food, ellenberg-sk, weeds-review
 */
export function weedEvidence(names: readonly string[]): WeedEvidence {
  const known: IndicatorPlantRow[] = [];
  const unknown: string[] = [];
  for (const name of new Set(names.map((each) => each.trim()).filter((each) => each !== ''))) {
    const row = findWeed(name);
    if (row === undefined) unknown.push(name);
    else if (!known.includes(row)) known.push(row);
  }
  const sour = known.filter((row) => row.lean === 'sour');
  const stand = sour.filter((row) => row.reliability === 'several');
  const sweet = known.filter((row) => row.lean === 'sweet');
  let lean: WeedEvidence['lean'] = 'nothing';
  let strength: WeedEvidence['strength'] = 'none';
  if (stand.length >= A_STAND && sweet.length === 0) [lean, strength] = ['sour', 'fair'];
  else if (sour.length > sweet.length) [lean, strength] = ['sour', 'weak'];
  else if (sweet.length > sour.length) [lean, strength] = ['sweet', 'weak'];
  const messages: Message[] = known.map(weedSaid);
  for (const name of unknown) messages.push({ code: 'nutrients.weed-unknown', parameters: { weed: name } });
  messages.push({
    code:
      lean === 'nothing'
        ? 'nutrients.weeds-nothing'
        : `nutrients.weeds-${lean}-${strength === 'fair' ? 'fair' : 'weak'}`,
  } as Message);
  messages.push({ code: 'nutrients.weeds-test-first' });
  return { lean, strength, known, unknown, messages, sources: sourcesOf(known) };
}

function weedSaid(row: IndicatorPlantRow): Message {
  if (row.low !== undefined && row.high !== undefined)
    return {
      code: row.reliability === 'none' ? 'nutrients.weed-span' : 'nutrients.weed-span-hint',
      parameters: {
        weed: row.name,
        low: { value: row.low, dimension: 'ph' },
        high: { value: row.high, dimension: 'ph' },
      },
    };
  return {
    code: row.reliability === 'several' ? 'nutrients.weed-several' : 'nutrients.weed-other-reasons',
    parameters: { weed: row.name },
  };
}

const sourcesOf = (rows: readonly IndicatorPlantRow[]): readonly string[] => [
  ...new Set([...rows.flatMap((row) => row.sources), 'ellenberg-sk', 'weeds-review']),
];
