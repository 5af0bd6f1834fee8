import { curveParameter } from '@sorrel/almanac/curve-parameters';
import { mediaStartPh } from '@sorrel/almanac/media-start-ph';
import { peatLimeCompost } from '@sorrel/almanac/peat-lime-compost';
import type { Fraction, KgPerM3, Ph } from '../units/si.ts';
import { leastCapacityThrough, solidCurve } from './buffer-curve.ts';
import { bulkDensityOf } from './bulk-density.ts';
import type { BufferCurve, LogEstimate } from './soil.ts';

/** kg CaCO3 per m³ and pH, the mean between 4.5 and 6.1 (COMPEAT; about 45 meq/L/pH). */
export const PEAT_PER_VOLUME = curveParameter('peat-per-volume').value;
const FROM: Ph = 4.5;
const TO: Ph = 6.1;
const SD = curveParameter('sd-peat').value;

/** Least buffer capacity by volume, kg CaCO3/m³/pH: the curve whose mean between 4.5 and 6.1 is 2.2. */
export const soillessCapacityByVolume: LogEstimate = {
  median: leastCapacityThrough(PEAT_PER_VOLUME * (TO - FROM), FROM, TO),
  sdLog: SD,
};

/** The same per kg of dry medium, kg CaCO3/kg/pH, for a layer of that density; 124 kg/m³ when not given (ARK_GH). */
export const soillessCapacity = (bulkDensity: KgPerM3 = bulkDensityOf({ medium: 'soilless' }).value): LogEstimate => ({
  median: soillessCapacityByVolume.median / bulkDensity,
  sdLog: SD,
});

/**
 * Buffer curve of a peat mix per m³ instead of per kg: `between` and `forward` then speak of kg CaCO3 per m³ of mix.
 * Coir and bark have no titration of their own here and are taken like peat.
 */
export const soillessCurve = (): BufferCurve => solidCurve(soillessCapacityByVolume.median, SD);

export type MediaComponent = 'peat' | 'coir' | 'bark' | 'compost';

/** Usual pH of an unlimed ingredient (MAHER_2008, second hand; compost TAYLOR_2016). */
export function startPhOf(component: MediaComponent): { readonly low: Ph; readonly high: Ph } {
  const row = mediaStartPh.find((one) => one.component === component);
  if (row === undefined) throw new RangeError(`no start pH of ${component}`);
  return { low: row.low, high: row.high };
}

const line = (compost: Fraction) => peatLimeCompost.filter((row) => row.compost === compost);
const PLAIN = line(0);
const WITH_COMPOST = line(0.4);
const COMPOST_TESTED: Fraction = 0.4;

const along = (rows: typeof PLAIN, lime: number): Ph | undefined => {
  const next = rows.findIndex((row) => row.lime >= lime);
  const above = rows[next];
  if (above === undefined || lime < 0) return undefined;
  if (above.lime === lime) return above.ph;
  const below = rows[next - 1];
  return below && below.ph + ((lime - below.lime) / (above.lime - below.lime)) * (above.ph - below.ph);
};

/**
 * pH of peat with lime and compost as a trial measured it (TAYLOR_2016, COMPEAT), straight lines between the points.
 *
 * @param lime kg/m³ (= g/L), 0 to 2.4, and to 3.6 without compost
 * @param compost share by volume, 0 to 0.4
 * @returns undefined outside what was measured
 */
export function peatCompostPh(lime: KgPerM3, compost: Fraction): Ph | undefined {
  if (compost < 0 || compost > COMPOST_TESTED) return undefined;
  const plain = along(PLAIN, lime);
  const mixed = along(WITH_COMPOST, lime);
  if (compost === 0) return plain;
  if (compost === COMPOST_TESTED) return mixed;
  return plain === undefined || mixed === undefined ? undefined : plain + (compost / COMPOST_TESTED) * (mixed - plain);
}

/** How far 40 % compost carries peat towards compost's own pH of 7: (6.7 − 4.5)/(7.0 − 4.5) (TAYLOR_2016). */
const PULL_TESTED = 0.88;

/**
 * Guess at the pH of an unlimed mix: middles of the ingredients by volume, pulled strongly towards compost, which sets the pH long
 * before it fills the pot. A guess only: test the mix. sd 0.5, our judgement.
 *
 * @param shares volumes in any unit; at least one over 0
 * @throws RangeError when there is nothing in the mix
 */
export function mixStartPh(shares: Partial<Record<MediaComponent, number>>): {
  readonly mean: Ph;
  readonly sd: number;
} {
  let rest = 0;
  let sum = 0;
  for (const component of ['peat', 'coir', 'bark'] as const) {
    const share = shares[component] ?? 0;
    const { low, high } = startPhOf(component);
    rest += share;
    sum += (share * (low + high)) / 2;
  }
  const compost = shares.compost ?? 0;
  if (!(rest + compost > 0)) throw new RangeError('the mix is empty');
  const { low, high } = startPhOf('compost');
  const own = (low + high) / 2;
  if (rest === 0) return { mean: own, sd: 0.5 };
  const base = sum / rest;
  const share = compost / (rest + compost);
  const pull =
    share <= COMPOST_TESTED
      ? (share / COMPOST_TESTED) * PULL_TESTED
      : PULL_TESTED + ((share - COMPOST_TESTED) / (1 - COMPOST_TESTED)) * (1 - PULL_TESTED);
  return { mean: base + pull * (own - base), sd: 0.5 };
}
