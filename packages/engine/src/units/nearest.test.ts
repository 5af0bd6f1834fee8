import { describe, expect, it } from 'vitest';
import { nearest } from './nearest.ts';

describe('the nearest known word', () => {
  it('is the one with fewest changes, the first of equals', () => {
    expect(nearest('tabelspoon', ['teaspoon', 'tablespoon'])).toBe('tablespoon');
    expect(nearest('cm', ['mm', 'm', 'cm'])).toBe('cm');
    expect(nearest('xm', ['mm', 'cm'])).toBe('mm');
  });

  it('is none when too little is shared', () => {
    expect(nearest('handful', ['cm', 'kg'])).toBeUndefined();
    expect(nearest('cm', [])).toBeUndefined();
  });
});
