import type { Recorder } from '../derivation/derivation.ts';
import type { Fraction, Metre } from '../units/si.ts';
import { bulkDensityOf, type DensityFacts } from './bulk-density.ts';
import type { Layer } from './soil.ts';

export interface LayerFacts extends DensityFacts {
  /** Depth that is treated, m, over 0. */
  readonly depth: Metre;
  /** Volume share of stones over 2 mm, 0 to below 1; 0 when not given. */
  readonly coarseFragments?: Fraction | undefined;
}

/**
 * The layer that is treated and its dry fine soil: `M = z·BD·(1 − f)`, kg per m² of bed.
 *
 * @throws RangeError for a depth of 0 or stones of 1 and more: check the entry first
 */
export function layerOf(facts: LayerFacts, recorder?: Recorder): Layer {
  const coarseFragments = facts.coarseFragments ?? 0;
  if (!(facts.depth > 0) || !(coarseFragments >= 0 && coarseFragments < 1))
    throw new RangeError('a layer needs a depth over 0 and stones below 1');
  const bulkDensity = bulkDensityOf(facts, recorder).value;
  const mass = facts.depth * bulkDensity * (1 - coarseFragments);
  if (recorder)
    recorder.step({
      symbol: 'M',
      title: 'Dry fine soil in the layer',
      formula: 'M = z BD (1 - f)',
      terms: [
        { symbol: 'z', value: facts.depth, unit: 'm', origin: 'entered' },
        { symbol: 'BD', value: bulkDensity, unit: 'kg/m3', origin: 'step' },
        {
          symbol: 'f',
          value: coarseFragments,
          unit: '1',
          origin: facts.coarseFragments === undefined ? 'choice' : 'entered',
        },
      ],
      value: mass,
      unit: 'kg/m2',
      sources: ['derived'],
      basis: 'derived',
    });
  return { depth: facts.depth, bulkDensity, coarseFragments, mass };
}
