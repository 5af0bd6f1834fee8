import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readFigure } from './figure.ts';

describe('readFigure', () => {
  // Ways of writing found on laboratories' tables: common practice, no source.
  it.each([
    ['<5', { kind: 'below', limit: 5 }],
    ['< 0,05', { kind: 'below', limit: 0.05 }],
    ['≤2', { kind: 'below', limit: 2 }],
    ['less than 5', { kind: 'below', limit: 5 }],
    ['>1000', { kind: 'above', limit: 1000 }],
    ['ND', { kind: 'not-detected' }],
    ['n.d.', { kind: 'not-detected' }],
    ['<LOD', { kind: 'not-detected' }],
    ['-', { kind: 'blank' }],
    ['n/a', { kind: 'blank' }],
    ['#DIV/0!', { kind: 'broken' }],
    ['5.4-5.8', { kind: 'range', low: 5.4, high: 5.8 }],
    ['0 to 6 in', { kind: 'range', low: 0, high: 6, unit: 'in' }],
    ['62 ppm', { kind: 'number', value: 62, unit: 'ppm' }],
    ['62 H', { kind: 'number', value: 62 }],
    ['62(VH)', { kind: 'number', value: 62 }],
    ['~5.4', { kind: 'number', value: 5.4 }],
    ['1,250', { kind: 'ambiguous' }],
    ['sour', { kind: 'text' }],
    ['pH 5.4', { kind: 'text' }],
    ['5.8-5.4', { kind: 'text' }],
  ])('%s', (cell, figure) => expect(readFigure(cell, undefined)).toEqual(figure));

  it('answers any text with one of its kinds, and never with a figure that is none', () => {
    fc.assert(
      fc.property(fc.string(), (cell) => {
        const figure = readFigure(cell.trim(), 'point');
        if (figure.kind === 'number') expect(Number.isFinite(figure.value)).toBe(true);
      }),
    );
  });
});
