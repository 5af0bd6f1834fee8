import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { typedPh } from './typed-ph.ts';

describe('typedPh', () => {
  it('takes a point or a comma', () => {
    expect(typedPh(' 6,4 ')).toEqual({ kind: 'good', ph: 6.4 });
    expect(typedPh('6.43')).toEqual({ kind: 'good', ph: 6.43 });
  });
  it('sees a forgotten point', () => {
    expect(typedPh('64')).toEqual({ kind: 'no-point', meant: 6.4 });
    expect(typedPh('643')).toEqual({ kind: 'no-point', meant: 6.43 });
    expect(typedPh('99')).toEqual({ kind: 'outside' });
  });
  it('asks about soils that are rare and refuses what is no pH', () => {
    expect(typedPh('3.9').kind).toBe('unusual');
    expect(typedPh('8.6').kind).toBe('unusual');
    expect(typedPh('15').kind).toBe('outside');
    expect(typedPh('-1').kind).toBe('outside');
    expect(typedPh('six').kind).toBe('no-number');
    expect(typedPh(' ').kind).toBe('empty');
  });
  it('never lets anything else through', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const typed = typedPh(text);
        if (typed.kind === 'good') expect(typed.ph >= 4 && typed.ph <= 8.5).toBe(true);
      }),
    );
  });
});
