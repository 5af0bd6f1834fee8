import type { Message } from '../derivation/message.ts';
import type { Ph } from '../units/si.ts';
import type { NutrientVerdict } from './verdict.ts';

/**
 * Nutrients that push one another aside: much potassium against magnesium, much phosphorus against zinc on limy soil.
 *
 * @source symptom-text (memory)
 */
export function beside(verdicts: readonly NutrientVerdict[], ph: Ph): readonly NutrientVerdict[] {
  const much = new Set(verdicts.filter(({ verdict }) => verdict === 'too much').map(({ nutrient }) => nutrient));
  if (much.size === 0) return verdicts;
  return verdicts.map((each) => {
    if (each.nutrient === 'Mg' && each.verdict === 'enough and usable' && much.has('K'))
      return pushed(each, 'nutrients.potassium-pushes');
    if (each.nutrient === 'Zn' && ph > 7 && much.has('P')) return pushed(each, 'nutrients.phosphorus-pushes');
    return each;
  });
}

const pushed = (verdict: NutrientVerdict, code: Message['code']): NutrientVerdict => ({
  ...verdict,
  reasons: [...verdict.reasons, { code }],
  sources: [...new Set([...verdict.sources, 'symptom-text'])],
  basis: 'memory',
});
