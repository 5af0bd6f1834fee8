import type { Recorder } from '../derivation/derivation.ts';

/**
 * Cores for a wanted error: `n = (z·s/E)²`, rounded up. The laboratory's own error comes on top and does not shrink.
 *
 * @param coreSd spread between single cores, pH units, over 0
 * @param halfWidth wanted half width E of the interval, pH units, over 0
 * @param z 1.96 for 95 %, 1.645 for 90 %
 * @throws RangeError when a figure is not over 0
 */
export function coresNeeded(coreSd: number, halfWidth: number, z = 1.96, recorder?: Recorder): number {
  if (!(coreSd > 0 && halfWidth > 0 && z > 0)) throw new RangeError('spread, half width and z must be over 0');
  // A hair is taken off so that an exact whole number is not pushed up by rounding.
  const cores = Math.max(1, Math.ceil(((z * coreSd) / halfWidth) ** 2 - 1e-9));
  if (recorder)
    recorder.step({
      symbol: 'n',
      title: 'Cores to take',
      formula: 'n = (z s / E)^2',
      terms: [
        { symbol: 'z', value: z, unit: '1', origin: 'choice' },
        { symbol: 's', value: coreSd, unit: 'pH', origin: 'entered' },
        { symbol: 'E', value: halfWidth, unit: 'pH', origin: 'entered' },
      ],
      value: cores,
      unit: '1',
      sources: ['MODEL'],
      basis: 'derived',
    });
  return cores;
}
