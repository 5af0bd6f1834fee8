import { usablePicture } from '@sorrel/engine/nutrients';
import { DOMParser } from '@xmldom/xmldom';
import { describe, expect, it } from 'vitest';
import { usablePictureSvg } from './usable-picture.ts';

const picture = usablePicture('mineral', { today: 5.1, planned: 6.3 });
const drawn = usablePictureSvg(picture, { system: 'metric' });
const tree = new DOMParser().parseFromString(drawn, 'image/svg+xml');
const all = (name: string) => [...tree.getElementsByTagName(name)];

describe('the picture of what is usable', () => {
  it('is well-formed and gives every nutrient and danger a line and a name', () => {
    expect(all('path').filter((one) => one.getAttribute('class') === 'line')).toHaveLength(12);
    expect(all('path').filter((one) => one.getAttribute('class') === 'risk')).toHaveLength(3);
    const texts = all('text').map((one) => one.textContent);
    for (const name of ['phosphorus', 'molybdenum', 'aluminium poison']) expect(texts).toContain(name);
  });
  it('marks today and the plan where they lie on the axis', () => {
    const upright = (kind: string) =>
      Number(
        all('line')
          .find((one) => one.getAttribute('class') === kind && one.getAttribute('x1') === one.getAttribute('x2'))
          ?.getAttribute('x1'),
      );
    expect(upright('today')).toBeCloseTo(150 + (1.1 / 5) * 470, 1);
    expect(upright('planned')).toBeCloseTo(150 + (2.3 / 5) * 470, 1);
  });
  it('uses no colour, and tells in words what it shows', () => {
    const paints = [...drawn.matchAll(/(?:fill|stroke)[:=]"?(#[0-9a-f]+)/gi)].map(([, paint = '']) => paint.slice(1));
    expect(paints.length).toBeGreaterThan(4);
    for (const paint of paints) expect(new Set(paint).size, paint).toBe(1);
    expect(all('desc')[0]?.textContent).toContain('iron: good at pH 5.1.');
  });
  it('keeps a pH off the scale at its edge', () => {
    expect(usablePictureSvg(usablePicture('soilless', { today: 3.1 }), { system: 'us' })).toContain('x1="150"');
  });
  it('never says a percentage', () => expect(drawn).not.toMatch(/\d\s*%/));
});
