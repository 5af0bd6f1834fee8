import { phConversion } from '@sorrel/almanac/ph-conversions';
import type { Fraction } from '../../units/si.ts';
import type { Conversion, ConversionFacts } from './converted.ts';
import { applyEquation } from './equation.ts';
import { fromWaterOneToFive } from './from-water-1-5.ts';

const peat = phConversion('water-from-kcl-peat');
const sand = phConversion('water-from-kcl-sand');
const clay = phConversion('water-from-kcl-clay');
const any = phConversion('water-5-from-kcl-2.5');

const SD = 0.3;
/** Organic matter from which the sand equation no longer holds (HB-PTF): the peat equation takes over. */
const PEATY: Fraction = 0.15;
const SANDY_CLAY: Fraction = 0.08;
const CLAYEY: Fraction = 0.2;

const rowsFor = (facts: ConversionFacts): { id: string; sources: readonly string[]; title: string } =>
  (facts.organicMatter ?? 0) >= PEATY
    ? { id: 'a + b pHKCl, peat', sources: peat.sources, title: 'pH in water, peat' }
    : facts.clay === undefined
      ? { id: '(a + b log10 pHKCl) at 1:5, then to 1:2.5', sources: any.sources, title: 'pH in water, texture unknown' }
      : {
          id: 'a + b pHKCl, between sand and clay by clay share',
          sources: clay.sources,
          title: 'pH in water, by clay',
        };

/**
 * 1 M KCl to water by soil: peat (15 % organic matter or more), clay (over 20 %), sand (up to 8 % clay here), and a
 * straight blend by clay between the two (HB-PTF, second hand). With the texture unknown, the equation for any texture
 * (KAB16) is used. sd 0.3, our judgement, for no paper prints one; sand and clay equations lie 0.5 apart.
 */
export const fromPotassiumChloride: Conversion = (value, facts, recorder) => {
  let mean: number;
  if ((facts.organicMatter ?? 0) >= PEATY) mean = applyEquation(peat, value);
  else if (facts.clay === undefined) mean = fromWaterOneToFive(applyEquation(any, value), facts)?.mean ?? Number.NaN;
  else {
    const share = Math.min(1, Math.max(0, (facts.clay - SANDY_CLAY) / (CLAYEY - SANDY_CLAY)));
    // Without a measured organic matter the sand equation is taken at none: 5 % would change it by 0.05.
    const onSand = applyEquation(sand, value, { organicMatter: facts.organicMatter ?? 0 });
    mean = onSand + share * (applyEquation(clay, value) - onSand);
  }
  if (recorder) {
    const rule = rowsFor(facts);
    recorder.step({
      symbol: 'pHw',
      title: rule.title,
      formula: `pHw = ${rule.id}`,
      terms: [
        { symbol: 'pHKCl', value, unit: 'pH', origin: 'entered' },
        ...(facts.clay === undefined
          ? []
          : [{ symbol: 'clay', value: facts.clay, unit: '1', origin: 'entered' } as const]),
      ],
      value: mean,
      unit: 'pH',
      sources: rule.sources,
      basis: 'read',
    });
  }
  return { mean, sd: SD };
};
