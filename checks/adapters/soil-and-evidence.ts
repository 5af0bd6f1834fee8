import type { Adapter } from '../adapter.ts';
import { evidencePh } from './evidence-ph.ts';
import { evidenceReadings } from './evidence-readings.ts';
import { soilTexture } from './soil-texture.ts';

/** Cases on texture, fizz, pH methods, cores, buffers and potting mixes. */
export const soilAndEvidence: readonly Adapter[] = [...soilTexture, ...evidencePh, ...evidenceReadings];
