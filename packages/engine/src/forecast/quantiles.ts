/** Lowest and highest pH counted; beyond lies in the outermost cell. */
export const LOWEST = 1;
const HIGHEST = 12;
/** A cell is 1/256 pH wide; straight within a cell, so a quantile is right to about 0.001. */
export const PER_PH = 256;
export const CELLS = (HIGHEST - LOWEST) * PER_PH;

/** Cell of a pH. Counting in cells gives quantiles of thousands of members without sorting them. */
export function cellOf(ph: number): number {
  const cell = (ph * PER_PH - LOWEST * PER_PH) | 0;
  // Below 0 reads as a huge unsigned number, so one comparison finds both ends.
  return cell >>> 0 < CELLS ? cell : ph < LOWEST ? 0 : CELLS - 1;
}

/**
 * Quantiles from counts by cell; the counts are set back to 0.
 *
 * @param shares ascending, over 0 and up to 1
 * @param total members counted
 */
export function drainQuantiles(cells: Int32Array, shares: readonly number[], total: number, out: Float64Array): void {
  let cumulative = 0;
  let next = 0;
  // Most cells are empty: the first ones are passed over four at a time.
  let cell = 0;
  while (
    cell + 4 < CELLS &&
    ((cells[cell] as number) |
      (cells[cell + 1] as number) |
      (cells[cell + 2] as number) |
      (cells[cell + 3] as number)) ===
      0
  )
    cell += 4;
  for (; next < shares.length && cell < CELLS; cell++) {
    const here = cells[cell] as number;
    if (here === 0) continue;
    while (next < shares.length && (shares[next] as number) * total <= cumulative + here) {
      out[next] = LOWEST + (cell + ((shares[next] as number) * total - cumulative) / here) / PER_PH;
      next++;
    }
    cumulative += here;
  }
  cells.fill(0);
}
