import type { Frame } from './frame.ts';
import { label, line } from './svg.ts';

const steps = ({ low, high }: Frame): number[] =>
  Array.from({ length: Math.round((high - low) * 2) + 1 }, (_, index) => low + index / 2);

/** Lines across at each half step of pH, under everything else. */
export const grid = (frame: Frame): string =>
  steps(frame)
    .map((ph) => line(frame.left, frame.y(ph), frame.right, frame.y(ph), { class: 'grid' }))
    .join('');

/** pH along the side, years along the bottom, with quarters between them. */
export function axes(frame: Frame, title: string): string {
  const { left, right, top, bottom, low, high } = frame;
  const parts: string[] = [];
  for (const ph of steps(frame))
    if (Number.isInteger(ph) || high - low <= 3)
      parts.push(label(left - 8, frame.y(ph) + 4, ph.toFixed(1), { 'text-anchor': 'end' }));
  parts.push(label(left - 8, top - 12, title, { 'text-anchor': 'end', class: 'strong' }));
  parts.push(line(left, bottom, right, bottom, { class: 'axis' }), line(left, top, left, bottom, { class: 'axis' }));
  for (let year = Number(frame.from.slice(0, 4)); year <= Number(frame.to.slice(0, 4)); year++)
    for (const month of [1, 4, 7, 10]) {
      const date = `${year}-${String(month).padStart(2, '0')}-01`;
      if (date < frame.from || date > frame.to) continue;
      const x = frame.x(date);
      parts.push(line(x, bottom, x, bottom + (month === 1 ? 8 : 4), { class: 'axis' }));
      if (month === 1) parts.push(label(x, bottom + 21, String(year), { 'text-anchor': 'middle' }));
    }
  return parts.join('');
}
