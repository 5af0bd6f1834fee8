import type { Message } from '../derivation/message.ts';
import type { NutrientLevel } from '../evidence/soil-test.ts';
import type { Medium } from '../soil/soil.ts';
import type { Ph } from '../units/si.ts';
import { isMediaExtract } from './media-extract.ts';
import { nutrientName } from './nutrient.ts';

/** Above this Bray and Mehlich figures of phosphorus mislead, and Olsen is the test (osu-ec1478, memory). */
export const LIMY_PHOSPHORUS = 7.2;

/**
 * Why a level cannot be read where it was taken: soil classes for a potting mix, mix classes for soil, or a phosphorus
 * test outside the pH it was made for. Undefined when it can.
 *
 * @source medium: mo-greenhouse; phosphorus: osu-ec1478 (memory)
 */
export function extractantFault(
  { nutrient, extractant }: NutrientLevel,
  { ph, medium }: { readonly ph: Ph; readonly medium: Medium },
): Message | undefined {
  const parameters = { nutrient: nutrientName(nutrient), extractant };
  if (medium === 'soilless' && !isMediaExtract(extractant)) return { code: 'nutrients.soil-test-of-mix', parameters };
  if (medium !== 'soilless' && isMediaExtract(extractant)) return { code: 'nutrients.mix-test-of-soil', parameters };
  if (nutrient !== 'P') return undefined;
  if (extractant === 'bray-p1' && ph > LIMY_PHOSPHORUS) return { code: 'nutrients.wrong-phosphorus-test', parameters };
  return undefined;
}
