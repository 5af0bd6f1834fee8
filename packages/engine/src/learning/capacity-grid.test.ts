import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { capacityByHand, capacityFromRetest } from './capacity-grid.ts';

const retest = { prior: { median: 40, sdLog: 0.5 }, dose: 60, eta: 0.75, change: 1, sd: 0.28 } as const;

describe('what one retest teaches', () => {
  it('has centre 46.8 and spread 0.254 (MODEL, dynamics check DY66, normal errors)', () => {
    const { meanLog, sdLog, median } = capacityFromRetest({ ...retest, law: 'normal' });
    expect(Math.abs(Math.exp(meanLog) / 46.8 - 1)).toBeLessThan(0.02);
    expect(Math.abs(sdLog / 0.254 - 1)).toBeLessThan(0.02);
    // The published centre is the mean on the logarithmic scale; the middle of the curve lies a little lower.
    expect(median).toBeGreaterThan(45.5);
    expect(median).toBeLessThan(46);
  });

  it('teaches nothing when nothing to speak of was put on', () => {
    const { meanLog, sdLog } = capacityFromRetest({ ...retest, dose: 1, change: 0.03 });
    expect(Math.exp(meanLog)).toBeCloseTo(40, 0);
    expect(sdLog).toBeGreaterThan(0.48);
  });

  it('a smaller answer never makes the soil resist less', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 2, noNaN: true }),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (change, more) => {
          const law = 'normal' as const;
          const one = capacityFromRetest({ ...retest, law, change: change + more });
          const other = capacityFromRetest({ ...retest, law, change });
          expect(other.meanLog).toBeGreaterThan(one.meanLog);
        },
      ),
      { numRuns: 50 },
    );
  });

  it('the sum by hand: 1 kg sulfur in 200 kg soil from 7.5 to 6.5 (acidification 5: 2000 S/32.065/(M d))', () => {
    const beta = capacityByHand(-3.1213, 200, -1, 1);
    expect((beta / 0.05004) * 1000).toBeCloseTo(((2000 * 1) / 32.065 / 200) * 1000, 0);
    expect(() => capacityByHand(1, 200, -0.1)).toThrow(RangeError);
  });
});
