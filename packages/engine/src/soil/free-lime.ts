import { curveParameter } from '@sorrel/almanac/curve-parameters';
import { freeLime } from '@sorrel/almanac/free-lime';
import type { Message } from '../derivation/message.ts';
import type { CarbonateEvidence } from '../evidence/carbonate.ts';
import type { Fraction, KgPerM2, Ph } from '../units/si.ts';

/** What can be done with a soil that must be made sourer. */
export type FreeLimeClass =
  /** No lime that matters. */
  | 'none'
  /** Under 0.3 %: over 1 to 2 years. */
  | 'workable'
  /** 0.3 to 1 %: over 2 to 4 years, or dig out. */
  | 'small beds only'
  /** Over 1 %: pots, raised beds on a barrier, or plants that stand lime. */
  | 'do not acidify in ground'
  /** pH high and nobody tested for lime. */
  | 'test first';

export interface FreeLime {
  readonly class: FreeLimeClass;
  readonly carbonate: CarbonateEvidence;
  /** pH above 8.4: sodium is likely, which needs another treatment (UC-BB). */
  readonly sodiumSuspected: boolean;
  readonly messages: readonly Message[];
}

/** Sulfur per carbonate, kg/kg: 32.065/100.087 (CHEM). */
export const SULFUR_PER_CARBONATE = curveParameter('sulfur-per-carbonate').value;
/** From this pH in water the dose can no longer be told from texture: test for lime. Our judgement after KSU-O. */
export const TEST_FOR_LIME_FROM: Ph = curveParameter('test-for-lime-ph').value;
/** Limy soils mostly read this in the slurry (KSU-O). */
export const LIMY_PH: Ph = curveParameter('free-lime-ph').value;
const SODIUM_PH: Ph = curveParameter('sodium-ph').value;
/** Carbonate below this is lost in the error of the tests. Our judgement. */
const TRACE: Fraction = 0.0005;

const bounds = freeLime.map((row) => ({ class: row.class as FreeLimeClass, to: (row.to_pct ?? 100) / 100 }));

/** Class of a known carbonate content, mass fraction. Bounds belong to the milder class. */
export function freeLimeClass(carbonate: Fraction): FreeLimeClass {
  if (carbonate < TRACE) return 'none';
  return bounds.find((row) => carbonate <= row.to)?.class ?? 'do not acidify in ground';
}

/**
 * Whether a soil holds free lime and what that allows. Measured carbonate first, then fizz, then the pH: from 8.2 an untested
 * soil is taken as limy until tested, from 7.2 it must be tested before acid is dosed.
 *
 * @param ph today's pH in water
 */
export function freeLimeOf(carbonate: CarbonateEvidence, ph: Ph): FreeLime {
  const messages: Message[] = [];
  const sodiumSuspected = ph > SODIUM_PH;
  if (sodiumSuspected)
    messages.push({ code: 'soil.sodium-suspected', parameters: { ph: { value: ph, dimension: 'ph' } } });
  if (carbonate.how === 'not tested') {
    if (ph < TEST_FOR_LIME_FROM) return { class: 'none', carbonate, sodiumSuspected, messages };
    messages.push({ code: ph >= LIMY_PH ? 'soil.lime-likely' : 'soil.test-for-lime' });
    return { class: 'test first', carbonate, sodiumSuspected, messages };
  }
  const found = freeLimeClass(carbonate.fraction);
  const fraction = { value: carbonate.fraction, dimension: 'share' } as const;
  if (found === 'workable') messages.push({ code: 'soil.lime-workable', parameters: { fraction } });
  else if (found === 'small beds only') messages.push({ code: 'soil.lime-small-beds', parameters: { fraction } });
  else if (found === 'do not acidify in ground')
    messages.push({ code: 'soil.lime-too-much', parameters: { fraction } });
  if (carbonate.how !== 'measured' && found !== 'none') messages.push({ code: 'soil.lime-by-fizz' });
  return { class: found, carbonate, sodiumSuspected, messages };
}

/** Sulfur that only eats the carbonate of a layer, kg/m²: 1 % in 15 cm is 0.635 kg. `S = 0.3204·C·M`. */
export const sulfurForCarbonate = (carbonate: Fraction, layerMass: KgPerM2): KgPerM2 =>
  SULFUR_PER_CARBONATE * carbonate * layerMass;

/**
 * pH that calcite holds in water under a carbon dioxide pressure: `pH = 5.93 − (2/3)·log10 p` at 25 °C (CHEM), 0.02 to 0.05 below
 * the full answer. 8.2 in air, 7.3 at 1 %: why one limy bed reads differently in the laboratory and in place.
 *
 * @param pressure atm, over 0
 */
export const calcitePh = (pressure: number): Ph => 5.93 - (2 / 3) * Math.log10(pressure);
