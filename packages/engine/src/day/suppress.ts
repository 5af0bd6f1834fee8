/** A count below this could point at a person (SDC_SUPPRESSION, from memory). */
export const SMALLEST_SHOWN = 5;

/**
 * A table of counts with the small ones hidden, so that nobody can be recognised. A count of 0 is shown. Where only one
 * cell of a row or of a column would be hidden, the next smallest is hidden with it: the total would give it away.
 *
 * @param table rows of counts, all of the same length
 * @param least counts from 1 up to but not including this are hidden
 * @returns the same table with `undefined` where a count is hidden
 * @throws RangeError when the rows differ in length or a count is negative
 * @source SDC_SUPPRESSION
 */
export function suppressSmall(
  table: readonly (readonly number[])[],
  least = SMALLEST_SHOWN,
): readonly (readonly (number | undefined)[])[] {
  const width = table[0]?.length ?? 0;
  if (table.some((row) => row.length !== width)) throw new RangeError('the rows of a table differ in length');
  if (table.some((row) => row.some((count) => !(count >= 0)))) throw new RangeError('a count is negative');
  const hidden = table.map((row) => row.map((count) => count > 0 && count < least));
  const lines = [
    ...table.map((row, y) => row.map((_, x) => [y, x] as const)),
    ...Array.from({ length: width }, (_, x) => table.map((_, y) => [y, x] as const)),
  ];
  // Hiding a second cell may leave a line the other way with a single one, so it goes round until nothing changes.
  for (let changed = true; changed; ) {
    changed = false;
    for (const line of lines) {
      const gone = line.filter(([y, x]) => hidden[y]?.[x]);
      if (gone.length !== 1) continue;
      const next = line
        .filter(([y, x]) => !hidden[y]?.[x] && countAt(table, y, x) > 0)
        .sort((a, b) => countAt(table, ...a) - countAt(table, ...b))[0];
      if (next === undefined) continue;
      const row = hidden[next[0]];
      if (row !== undefined) row[next[1]] = true;
      changed = true;
    }
  }
  return table.map((row, y) => row.map((count, x) => (hidden[y]?.[x] ? undefined : count)));
}

const countAt = (table: readonly (readonly number[])[], y: number, x: number): number => table[y]?.[x] ?? 0;
