import { describe, expect, it } from 'vitest';
import { plainNumber, significant } from './round.ts';

describe('rounding', () => {
  it('keeps significant digits', () => {
    expect(significant(12345, 3)).toBe(12300);
    expect(significant(0.0012345, 2)).toBe(0.0012);
    expect(significant(0, 3)).toBe(0);
  });

  it('writes no exponent', () => {
    expect(plainNumber(1.5e-7)).toBe('0.00000015');
    expect(plainNumber(123000)).toBe('123000');
    expect(plainNumber(0)).toBe('0');
  });
});
