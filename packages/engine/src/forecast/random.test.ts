import { expect, it } from 'vitest';
import { createRandom } from './random.ts';

it('fills with the same normals that come one by one, whatever the lengths', () => {
  const one = createRandom(5);
  const many = createRandom(5);
  for (const length of [1, 4, 3, 0, 2, 7]) {
    const out = new Float64Array(length);
    many.normals(out);
    expect([...out]).toEqual(Array.from({ length }, () => one.normal()));
  }
});

it('draws normals of mean 0, variance 1 and kurtosis 3', () => {
  const out = new Float64Array(100_000);
  createRandom(6).normals(out);
  const moment = (power: number) => out.reduce((sum, value) => sum + value ** power, 0) / out.length;
  expect(Math.abs(moment(1))).toBeLessThan(0.02);
  expect(Math.abs(moment(2) - 1)).toBeLessThan(0.02);
  expect(Math.abs(moment(4) - 3)).toBeLessThan(0.15);
});
