import type { RequirementMethod } from '../method.ts';
import { byTexture } from './by-texture.ts';
import { clemson } from './clemson.ts';
import { cranberry } from './cranberry.ts';
import { extensionBlueberry } from './extension-blueberry.ts';
import { fromCec } from './from-cec.ts';
import { kansasNewer } from './kansas-newer.ts';
import { kansasOlder } from './kansas-older.ts';
import { michiganState } from './michigan-state.ts';
import { northDakota } from './north-dakota.ts';
import { ontario } from './ontario.ts';
import { royalHorticultural } from './royal-horticultural.ts';
import { sevenInch } from './seven-inch.ts';
import { tennessee } from './tennessee.ts';
import { toSixAndAHalf } from './to-six-and-a-half.ts';
import { wildBlueberry } from './wild-blueberry.ts';

export { byTexture, capacityByTexture } from './by-texture.ts';
export { fromCec } from './from-cec.ts';
export { orchardShares } from './orchard-shares.ts';
export { type PublishedSulfur, sulfurPublished } from './published.ts';
export { KG_PER_M2, type RateUnit } from './rate.ts';
export { aluminiumSulfatePublished, type Sulfate, sulfatePublished } from './sulfates.ts';
export * from './sulfur.ts';

/** Every method that reads what it takes to lower pH; `fromCec` reads upwards as well. */
export const lowerMethods: readonly RequirementMethod[] = [
  fromCec,
  byTexture,
  ontario,
  michiganState,
  sevenInch,
  tennessee,
  extensionBlueberry,
  kansasNewer,
  kansasOlder,
  royalHorticultural,
  wildBlueberry,
  cranberry,
  toSixAndAHalf,
  northDakota,
  clemson,
];
