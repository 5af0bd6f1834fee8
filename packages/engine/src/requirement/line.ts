/** A printed column: figures between the rows are read on the straight line. */
export interface Line {
  readonly x: readonly number[];
  readonly y: readonly number[];
}

/** Sorts printed points into a line. */
export function lineOf(points: Iterable<readonly [number, number]>): Line {
  const sorted = [...points].sort((a, b) => a[0] - b[0]);
  return { x: sorted.map((point) => point[0]), y: sorted.map((point) => point[1]) };
}

/** Value of the line at `x`; NaN outside the printed rows. */
export function valueAt(line: Line, x: number): number {
  const { x: xs, y: ys } = line;
  let low = 0;
  let high = xs.length - 1;
  const first = xs[low];
  const last = xs[high];
  if (first === undefined || last === undefined || !(x >= first - 1e-9 && x <= last + 1e-9)) return Number.NaN;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((xs[middle] as number) <= x) low = middle;
    else high = middle;
  }
  const x0 = xs[low] as number;
  const y0 = ys[low] as number;
  if (high === low) return y0;
  return y0 + (((ys[high] as number) - y0) * (x - x0)) / ((xs[high] as number) - x0);
}
