import { describe, expect, it } from 'vitest';
import { createRecorder, gaps } from '../derivation/derivation.ts';
import { titratedNeutralisingValue } from './titration.ts';
import { fromCalciumOxide, toCalciumOxide } from './uk-neutralising-value.ts';

describe('neutralising value by titration', () => {
  // UKNV: 1 mL of 0.5 M HCl = 0.01402 g CaO on a 0.5 g sample; pure CaCO3 reads 56.0.
  it('gives the statutory figure', () => {
    const recorder = createRecorder();
    const found = titratedNeutralisingValue({ sample: 0.0005, acid: 500, consumed: 1e-6 }, recorder);
    expect(toCalciumOxide(found) * 0.5).toBeCloseTo(0.01402, 5);
    expect(fromCalciumOxide(0.56)).toBeCloseTo(1, 2);
    expect(gaps(recorder.derivation())).toEqual([]);
  });

  it('wants a sample', () => {
    expect(() => titratedNeutralisingValue({ sample: 0, acid: 500, consumed: 1e-5 })).toThrow(/sample/);
  });
});
