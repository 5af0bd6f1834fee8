import type { Message } from '../derivation/message.ts';
import type { NutrientLevel } from '../evidence/soil-test.ts';
import { nutrientName } from './nutrient.ts';
import type { Verdict, VerdictSetting } from './verdict.ts';

/**
 * What to do about a verdict. Where a nutrient is locked the first sentence says that more of it will not help.
 *
 * @source lock-up rules of the almanac: njaes-levels, iron-mn-dnr, umd-2006, uky-mn, udel-brassica, symptom-text (memory); order: SORREL
 */
export function actionsFor(level: NutrientLevel, verdict: Verdict, setting: VerdictSetting): readonly Message[] {
  const { nutrient } = level;
  const parameters = { nutrient: nutrientName(nutrient) };
  const limy = setting.ph > 7;
  switch (verdict) {
    case 'enough and usable':
      return nutrient === 'Ca'
        ? [{ code: 'nutrients.calcium-transport' }]
        : [{ code: 'nutrients.add-none', parameters }];
    case 'enough but locked': {
      const said: Message[] = [{ code: 'nutrients.locked-no-feed', parameters }];
      if (nutrient === 'Fe') said.push({ code: 'nutrients.iron-order' });
      else if (nutrient === 'Mn' && setting.ph > 6.5) said.push({ code: 'nutrients.manganese-locked' });
      else if (nutrient === 'P') said.push({ code: 'nutrients.phosphorus-locked' });
      else if (nutrient === 'Zn') said.push({ code: 'nutrients.zinc-locked' });
      return said;
    }
    case 'too much':
      if (nutrient === 'Mn')
        return [{ code: setting.ph < 5.5 ? 'nutrients.manganese-sour' : 'nutrients.manganese-wet' }];
      if (nutrient === 'B') return [{ code: 'nutrients.boron-much' }];
      return [{ code: 'nutrients.too-much', parameters }];
    case 'truly short':
      if (nutrient === 'Mg')
        return [{ code: setting.ph < 6 ? 'nutrients.magnesium-sour' : 'nutrients.magnesium-plain' }];
      if (nutrient === 'B') return [{ code: 'nutrients.boron-short' }];
      if (nutrient === 'Fe' || (nutrient === 'Mn' && limy)) return [{ code: 'nutrients.iron-short', parameters }];
      return [{ code: 'nutrients.add-some', parameters }];
    default:
      return [{ code: 'nutrients.add-none-until-known', parameters }];
  }
}
