import type { Mark } from '@sorrel/engine/plan';
import { element, through } from './svg.ts';

/** A triangle that points up for what sweetens and down for what sours; hollow when only a retest decides. */
export function symbol({ effect, state }: Mark, x: number, y: number): string {
  const tip = effect === 'sweetens' ? y - 7 : y + 6;
  const base = effect === 'sweetens' ? y + 5 : y - 6;
  return element('path', {
    class: state === 'only if a retest asks' ? 'hollow' : 'full',
    d: `${through([
      [x, tip],
      [x + 7, base],
      [x - 7, base],
    ])}Z`,
  });
}
