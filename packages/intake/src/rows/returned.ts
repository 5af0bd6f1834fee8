/** Columns that a list of rows to mend starts with. Their names tell such a list when it comes back. */
export const mendColumns = ['sorrel line', 'sorrel column', 'sorrel reason', 'sorrel mend'] as const;

/** Where the columns of a list of rows to mend stand in a file that is one. */
export interface Returned {
  /** Column that holds the line of the first file. */
  readonly lineAt: number;
  /** All columns that were added to the sender's. */
  readonly added: readonly number[];
}

/** Tells a list of rows to mend by its titles. */
export function returnedOf(titles: readonly string[]): Returned | undefined {
  const at = mendColumns.map((name) => titles.findIndex((title) => title.trim().toLowerCase() === name));
  const [lineAt = -1, , reasonAt = -1] = at;
  return lineAt < 0 || reasonAt < 0 ? undefined : { lineAt, added: at.filter((each) => each >= 0) };
}

/** A cell as it was before a sign was put in front so that no spreadsheet runs it as a formula. */
export const unguarded = (cell: string): string => (/^'[=+\-@\t\r]/.test(cell) ? cell.slice(1) : cell);
