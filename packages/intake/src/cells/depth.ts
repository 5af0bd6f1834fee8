import type { Figure } from './figure.ts';

/** The depth a figure tells: cores go from the surface to the lower end. `below-surface` when they start further down. */
export function depthOf(figure: Figure): number | 'below-surface' | undefined {
  if (figure.kind === 'number') return figure.value;
  if (figure.kind !== 'range') return undefined;
  return figure.low === 0 ? figure.high : 'below-surface';
}
