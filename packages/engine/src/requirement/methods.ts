import { adamsEvans } from './adams-evans.ts';
import { brAlCaMg } from './br-al-camg.ts';
import { brBaseSaturation } from './br-base-saturation.ts';
import { cochrane } from './cochrane.ts';
import { compostBed } from './compost-bed.ts';
import { gardenTables } from './garden-tables.ts';
import { kamprath } from './kamprath.ts';
import { kansas } from './kansas.ts';
import { lowerMethods } from './lower/index.ts';
import { mehlich1976 } from './mehlich-1976.ts';
import type { RequirementMethod } from './method.ts';
import { ncMehlich } from './nc-mehlich.ts';
import { nswEcec } from './nsw-ecec.ts';
import { osuSikora } from './osu-sikora.ts';
import { peatMix } from './peat-mix.ts';
import { printedRate } from './printed-rate.ts';
import { psuMehlich } from './psu-mehlich.ts';
import { psuTurf } from './psu-turf.ts';
import { ptfCurtinTrolove, ptfWong } from './ptf.ts';
import { smpTableAgGround, smpTablePure } from './smp-table.ts';
import { smpTristate } from './smp-tristate.ts';
import { textureOnly } from './texture-only.ts';
import { tristateOrganic } from './tristate-organic.ts';
import { ugaLbc } from './uga-lbc.ts';
import { ukFactor } from './uk-factor.ts';

/**
 * The order matters where two readings of one kind are equally fit: the earlier speaks. Foreign SMP and Sikora figures
 * go to Oregon's table first, the newest calibration and the one without an allowance (lime-requirement, section 7).
 */

/** By what a soil test must hold for them to say anything, so that the reconciler asks nobody in vain. */
export const capacityMethods: readonly RequirementMethod[] = [ugaLbc];
export const printedMethods: readonly RequirementMethod[] = [printedRate];
export const bufferMethods: readonly RequirementMethod[] = [
  osuSikora,
  smpTristate,
  smpTablePure,
  smpTableAgGround,
  kansas,
  adamsEvans,
];
/** By mass, by volume, or from a Mehlich buffer pH. */
export const acidityMethods: readonly RequirementMethod[] = [psuMehlich, psuTurf, ncMehlich, mehlich1976];
export const aluminiumMethods: readonly RequirementMethod[] = [cochrane, kamprath, brAlCaMg];
/** An exchange capacity, or the aluminium and bases it is summed from. */
export const exchangeMethods: readonly RequirementMethod[] = [brBaseSaturation, nswEcec];

/** Read what is known of the place, whatever the test. */
export const placeMethods: readonly RequirementMethod[] = [
  ptfWong,
  ptfCurtinTrolove,
  peatMix,
  compostBed,
  tristateOrganic,
];

/** Speak only when texture is all there is. */
export const textureMethods: readonly RequirementMethod[] = [textureOnly, ukFactor, gardenTables];

/** The way down: asked only when the pH is to be lowered. */
export { lowerMethods };

/** Every published method Sorrel knows how to read. */
export const methods: readonly RequirementMethod[] = [
  ...capacityMethods,
  ...printedMethods,
  ...bufferMethods,
  ...acidityMethods,
  ...aluminiumMethods,
  ...exchangeMethods,
  ...placeMethods,
  ...textureMethods,
  ...lowerMethods,
];

const byId = new Map(methods.map((method) => [method.id, method]));
export const methodById = (id: string): RequirementMethod | undefined => byId.get(id);
