import { sieves } from '@sorrel/almanac/sieves';
import type { Metre } from '../../units/si.ts';

const byMesh = new Map(
  sieves.filter((row) => row.edition === 'current').map((row) => [row.mesh, row.openingMm / 1000]),
);

/** Older tables print 2.38 or 0.149 mm for what is 2.36 and 0.150 mm now: within 2 % it is the same screen. */
const SAME = 0.02;

/** Opening of a US sieve number, m; `undefined` for a number no table lists. Source: ASTME11 (memory), CROPFILE. */
export const meshOpening = (mesh: number): Metre | undefined => byMesh.get(mesh);

/** Whether two openings name the same screen. */
export const sameScreen = (a: Metre, b: Metre): boolean => Math.abs(a - b) <= SAME * Math.max(a, b);

/**
 * Opening of a screen as people write it: `60`, `60 mesh`, `No. 60`, `#60`, `0.25 mm`, `250 um`.
 * A bare number is a US sieve number.
 *
 * @returns m, or `undefined` when it cannot be read
 */
export function openingOf(text: string): Metre | undefined {
  const found = /^(?:us|no\.?|number|mesh|#|\s)*(\d+(?:\.\d+)?)\s*(mesh|mm|um|µm|μm|micron|microns)?$/i.exec(
    text.trim(),
  );
  if (found === null) return undefined;
  const value = Number(found[1]);
  const unit = found[2]?.toLowerCase();
  if (unit === 'mm') return value / 1e3;
  if (unit === undefined || unit === 'mesh') return meshOpening(value);
  return value / 1e6;
}
