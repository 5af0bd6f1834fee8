import { describe, expect, it } from 'vitest';
import { nextCode } from './next-code.ts';

describe('nextCode', () => {
  it('counts on from the last bag and keeps letters and zeros', () => {
    expect(nextCode([])).toBe('A001');
    expect(nextCode(['A001', 'A002'])).toBe('A003');
    expect(nextCode(['B-09'])).toBe('B-10');
    expect(nextCode(['A999'])).toBe('A1000');
  });
  it('passes over codes that are taken, in small letters too', () => {
    expect(nextCode(['A001', 'a002', 'A001'])).toBe('A003');
    expect(nextCode(['A003', 'A001'])).toBe('A002');
    expect(nextCode(['A002', 'A003', 'A001'])).toBe('A004');
  });
  it('passes over codes without a number', () => {
    expect(nextCode(['A004', 'rose'])).toBe('A005');
    expect(nextCode(['rose'])).toBe('A001');
  });
});
