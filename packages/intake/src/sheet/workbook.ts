import type { TableRecord } from '../records/split.ts';

/** Loaded only when a workbook comes: most files are text. */
const library = () => import('hucre/xlsx');

/** Whether a file is a workbook: an archive by its first letters, as XLSX is. */
export const isWorkbook = (bytes: Uint8Array): boolean =>
  bytes[0] === 0x50 && bytes[1] === 0x4b && (bytes[2] === 0x03 || bytes[2] === 0x05);

/** Whether a file is a workbook in the older binary form, which is not read. */
export const isOldWorkbook = (bytes: Uint8Array): boolean =>
  bytes[0] === 0xd0 && bytes[1] === 0xcf && bytes[2] === 0x11 && bytes[3] === 0xe0;

/** Names of the sheets of a workbook, in order. Throws when it is none, is damaged or locked. */
export async function sheetNames(bytes: Uint8Array): Promise<string[]> {
  const { readXlsx } = await library();
  const workbook = await readXlsx(bytes, { maxRows: 1 });
  return workbook.sheets.map((sheet) => sheet.name);
}

/**
 * Rows of one sheet with their numbers, as text: numbers with a decimal point, days as year-month-day. Empty rows are
 * passed over.
 */
export async function* sheetRows(bytes: Uint8Array, sheet: string, most?: number): AsyncGenerator<TableRecord> {
  const { streamXlsxRows } = await library();
  const rows = streamXlsxRows(bytes, { sheet, ...(most === undefined ? {} : { maxRows: most }) });
  for await (const { index, values } of rows) {
    const cells = values.map(cellText);
    if (cells.some((cell) => cell !== '')) yield { cells, line: index + 1 };
  }
}

type Value = string | number | boolean | Date | null | undefined;

/** A cell of a workbook as text that cannot be read in two ways. */
export function cellText(value: Value): string {
  if (value === null || value === undefined) return '';
  if (typeof value === 'string') return value;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (value instanceof Date) return Number.isNaN(value.getTime()) ? '' : value.toISOString().slice(0, 10);
  // Workbooks keep 5.4 as 5.4000000000000004 now and then.
  const text = String(Number(value.toPrecision(12)));
  // Three decimals could be taken for thousands.
  return /^\d{1,3}\.\d{3}$/.test(text) ? `${text}0` : text;
}
