import { CELLS, cellOf } from './quantiles.ts';

/** What is counted of the members week by week. */
export interface Tally {
  readonly count: number;
  /** Random walk of each member at the last knot, its slope a step, and the error of its test: three columns. */
  readonly members: Float64Array;
  /** Members by cell of their pH, and of what a retest would print. */
  readonly cells: Int32Array;
  readonly retestCells: Int32Array;
  /** INSIDE, ABOVE and BELOW, once it has happened to the member. */
  readonly marks: Uint8Array;
  /** Members inside now, and those that have been. */
  inside: number;
  been: number;
}

export const INSIDE = 1;
export const ABOVE = 2;
export const BELOW = 4;

/** Ends of the range wanted and of the safe one. */
export interface Ends {
  readonly low: number;
  readonly high: number;
  readonly safeLow: number;
  readonly safeHigh: number;
}

export function createTally(count: number): Tally {
  return {
    count,
    members: new Float64Array(3 * count),
    cells: new Int32Array(CELLS),
    retestCells: new Int32Array(CELLS),
    marks: new Uint8Array(count),
    inside: 0,
    been: 0,
  };
}

/** Counts all members in one week: `ph + walk + since · slope`. */
export function tallyWeek(tally: Tally, ph: Float32Array, row: number, since: number, ends: Ends): void {
  const { count, members, cells, retestCells, marks } = tally;
  const { low, high, safeLow, safeHigh } = ends;
  let inside = 0;
  let fresh = 0;
  for (let m = 0; m < count; m++) {
    const at = (ph[row + m] as number) + (members[m] as number) + since * (members[count + m] as number);
    const cell = cellOf(at);
    const printed = cellOf(at + (members[2 * count + m] as number));
    cells[cell] = (cells[cell] as number) + 1;
    retestCells[printed] = (retestCells[printed] as number) + 1;
    const now = at >= low && at <= high ? INSIDE : 0;
    const before = marks[m] as number;
    inside += now;
    fresh += now & ~before;
    marks[m] = before | now | (at > safeHigh ? ABOVE : at < safeLow ? BELOW : 0);
  }
  tally.inside = inside;
  tally.been += fresh;
}

/** Share of members with a mark. */
export function shareMarked(tally: Tally, mark: number): number {
  let sum = 0;
  for (const marks of tally.marks) if ((marks & mark) !== 0) sum++;
  return sum / tally.count;
}
