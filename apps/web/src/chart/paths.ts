/** A tenth of a pixel is as close as a screen shows. */
const round = (value: number): number => Math.round(value * 10) / 10;

function points(xs: readonly number[], ys: readonly number[]): string {
  let text = '';
  for (let i = 0; i < xs.length; i++) text += `${i === 0 ? '' : 'L'}${round(xs[i] ?? 0)},${round(ys[i] ?? 0)}`;
  return text;
}

/** SVG path through points, straight between them; empty for no points. */
export const linePath = (xs: readonly number[], ys: readonly number[]): string =>
  xs.length === 0 ? '' : `M${points(xs, ys)}`;

/** SVG path of what lies between two lines over the same places: along the upper one and back along the lower. */
export function bandPath(xs: readonly number[], lows: readonly number[], highs: readonly number[]): string {
  if (xs.length === 0) return '';
  return `M${points(xs, highs)}L${points([...xs].reverse(), [...lows].reverse())}Z`;
}
