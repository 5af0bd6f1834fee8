import type { Recorder } from '../derivation/derivation.ts';

/**
 * Rate of the product at hand from a rate printed for a standard lime: `R = R0 · standard / index`.
 *
 * @param rate R0, in any unit of mass or mass per area; the answer is in the same unit
 * @param standard index the rate was calibrated with, e.g. 1 for "100 % CCE", 0.9 for Michigan and North Carolina
 * @param index the same index of the product (> 0)
 * @throws RangeError when the index is not above 0
 * @source PSULAWN, CLEMBY, MOLIME, NCLIME
 */
export function productRate(rate: number, standard: number, index: number, recorder?: Recorder): number {
  if (!(index > 0)) throw new RangeError(`index must be above 0, got ${index}`);
  const value = (rate * standard) / index;
  if (recorder)
    recorder.step({
      symbol: 'R',
      title: 'Rate of the product at hand',
      formula: 'R = R0 · s / i',
      terms: [
        { symbol: 'R0', value: rate, unit: '', origin: 'entered' },
        { symbol: 's', value: standard, unit: '', origin: 'entered' },
        { symbol: 'i', value: index, unit: '', origin: 'entered' },
      ],
      value,
      unit: '',
      sources: ['PSULAWN', 'CLEMBY'],
      basis: 'read',
    });
  return value;
}

/**
 * Price of the part of a product that works: `price / index`, in the unit of `price`.
 *
 * @param index effective share of the product, 0 to about 1.8 (> 0)
 * @throws RangeError when the index is not above 0
 * @source WALIME
 */
export function effectivePrice(price: number, index: number): number {
  if (!(index > 0)) throw new RangeError(`index must be above 0, got ${index}`);
  return price / index;
}
