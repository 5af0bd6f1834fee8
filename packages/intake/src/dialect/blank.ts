/** Whether a row holds nothing at all. */
export const isBlankRow = (cells: readonly string[]): boolean => cells.every((cell) => cell.trim() === '');
