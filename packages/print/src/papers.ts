import type { HalfKnownPlantRow } from '@sorrel/almanac/half-known-plants';
import type { PlantRow } from '@sorrel/almanac/plants';
import type { Garden, GardenPlan, Place, Recommendation } from '@sorrel/engine/plan';
import { plantContent } from './content/plant-content.ts';
import { type Seen, symptomsContent } from './content/symptoms-content.ts';
import { usableContent } from './content/usable-content.ts';
import { type PageOptions, pages } from './page.ts';
import { speakerFor } from './speaker.ts';

/**
 * A page for one plant: the pH it wants, which places of the garden suit it, its diseases, and who says so.
 *
 * @param garden places to look at; without places only the plant is printed
 * @returns PDF
 */
export function plantPage(
  plant: PlantRow | HalfKnownPlantRow,
  garden: Garden,
  plan: GardenPlan,
  options: PageOptions,
): Uint8Array {
  const speaker = speakerFor(options);
  const title = speaker.word('print.plant-title', { plant: plant.name });
  return pages(title, [plantContent(plant, garden, plan, speaker)], options, speaker);
}

/**
 * A page for each place that says what its plants can use: the picture, what is enough, locked, short or too much.
 *
 * @returns PDF
 */
export function usablePages(
  list: readonly { readonly place: Place; readonly recommendation: Recommendation }[],
  options: PageOptions,
): Uint8Array {
  const speaker = speakerFor(options);
  const sheets = list.map(({ place, recommendation }) => usableContent(place, recommendation, speaker));
  const title = sheets.length === 1 ? (sheets[0]?.title ?? '') : speaker.word('print.usable-title-all');
  return pages(title, sheets, options, speaker);
}

/**
 * A page of what was seen on a sick plant: the answers, what it may be with rough chances, and what to look at next.
 *
 * @throws RangeError for an answer its question does not take
 * @returns PDF
 */
export function symptomsPage(seen: Seen, options: PageOptions): Uint8Array {
  const speaker = speakerFor(options);
  const sheet = symptomsContent(seen, speaker);
  return pages(sheet.title, [sheet], options, speaker);
}
