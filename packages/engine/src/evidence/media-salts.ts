import { mediaEc } from '@sorrel/almanac/media-ec';
import type { SiemensPerMetre } from '../units/si.ts';
import type { PhMethod } from './soil-test.ts';

export type MediaMethod = Extract<PhMethod, 'media-1:2' | 'media-extract' | 'pour-through'>;

/** Name of each method in the published band table. */
export const MEDIA_METHOD_NAMES: Readonly<Record<MediaMethod, string>> = {
  'media-1:2': '1:2',
  'media-extract': 'SME',
  'pour-through': 'pour-through',
};

/**
 * How salty a potting mix is, in words. The same figure means different things by method: 2.6 mS/cm is extreme in 1:2,
 * normal in an extract and low in a pour-through (UMASS_MEDIA; bands UMASS_T2_COPY). Upper bounds belong to the band.
 *
 * @param conductivity S/m, 0 or more
 */
export function saltClass(method: MediaMethod, conductivity: SiemensPerMetre): string | undefined {
  // Rounded so that 2.6 mS/cm, stored as 0.26 S/m, still lies on its printed bound.
  const read = Math.round(conductivity * 1e7) / 1e6;
  if (!(read >= 0)) return undefined;
  const name = MEDIA_METHOD_NAMES[method];
  return mediaEc.find((row) => row.method === name && (row.high === undefined || read <= row.high))?.class;
}
