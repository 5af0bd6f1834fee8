import type { Foreseen } from '@sorrel/engine/plan';
import type { Speaker } from '../speaker.ts';
import { element, label, line } from './svg.ts';

/** What the signs mean, in two rows. */
export function legend({ tests }: Foreseen, top: number, speaker: Speaker): string {
  const columns = [16, 190, 340, 500];
  const swatch = (column: number, row: number, sign: (x: number, y: number) => string, text: string): string => {
    const x = columns[column] ?? 0;
    const y = top + row * 24 + 12;
    return `${sign(x, y)}${label(x + 36, y + 4, text)}`;
  };
  const box = (name: string) => (x: number, y: number) =>
    element('rect', { class: name, x, y: y - 7, width: 28, height: 14 });
  return [
    swatch(0, 0, (x, y) => line(x, y, x + 28, y, { class: 'median' }), speaker.word('picture.median')),
    swatch(1, 0, box('b50'), speaker.word('picture.half')),
    swatch(2, 0, box('b80'), speaker.word('picture.most')),
    swatch(3, 0, box('b95'), speaker.word('picture.nearly-all')),
    swatch(
      0,
      1,
      (x, y) =>
        `${line(x + 14, y - 9, x + 14, y + 9, { class: 'bar' })}${element('circle', { class: 'dot', cx: x + 14, cy: y, r: 5 })}`,
      speaker.word('picture.test'),
    ),
    tests.some(({ outlier }) => outlier)
      ? swatch(
          1,
          1,
          (x, y) =>
            `${element('circle', { class: 'dot', cx: x + 14, cy: y, r: 5 })}${line(x + 6, y - 8, x + 22, y + 8, { class: 'bar' })}${line(x + 6, y + 8, x + 22, y - 8, { class: 'bar' })}`,
          speaker.word('picture.odd-test'),
        )
      : '',
  ].join('');
}
