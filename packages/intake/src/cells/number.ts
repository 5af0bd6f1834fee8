/** Which sign stands before the tenths. */
export type Decimal = 'point' | 'comma';

const GROUPED_BY_BLANK = /^[+-]?\d{1,3}(?:[ \u00a0\u2009\u202f'\u2019]\d{3})+(?=$|[.,])/;
const SHAPE = /^([+-]?)(\d*)((?:[.,]\d+)*)([.,]?)(e[+-]?\d{1,2})?$/i;

/**
 * Reads a number as it is written anywhere: decimal point or comma, thousands set off by the other sign, by blanks or by
 * apostrophes.
 *
 * @param text without blanks at its ends
 * @param decimal the file's decimal sign; only needed for `1,250` and `1.250`, which could be either
 * @returns the number, `ambiguous` when the sign decides and is not known, `undefined` when it is no number
 */
export function numberOf(text: string, decimal: Decimal | undefined): number | 'ambiguous' | undefined {
  const grouped = GROUPED_BY_BLANK.exec(text)?.[0];
  const plain = grouped === undefined ? text : grouped.replace(/[^\d+-]/g, '') + text.slice(grouped.length);
  const shape = SHAPE.exec(plain);
  if (shape === null) return undefined;
  const [, sign = '', whole = '', rest = '', trailing = '', exponent = ''] = shape;
  if (whole === '' && rest === '') return undefined;
  const parts = rest === '' ? [] : rest.slice(1).split(/[.,]/);
  const signs = rest.replace(/\d/g, '');
  if (trailing !== '' && parts.length > 0) return undefined;
  const made = (digits: string, fraction: string) => Number(`${sign}${digits || '0'}.${fraction || '0'}${exponent}`);
  if (parts.length === 0) return made(whole, '');
  const groups = whole.length <= 3 && whole !== '' && !/^0/.test(whole) && parts.every((part) => part.length === 3);
  if (parts.length === 1) {
    if (!groups || grouped !== undefined) return made(whole, parts[0] ?? '');
    if (decimal === undefined) return 'ambiguous';
    return (signs === ',') === (decimal === 'comma') ? made(whole, parts[0] ?? '') : made(whole + parts[0], '');
  }
  const last = signs.at(-1) as string;
  const before = signs.slice(0, -1);
  if (before.includes(last)) return groups && new Set(signs).size === 1 ? made(whole + parts.join(''), '') : undefined;
  const thousands = parts.slice(0, -1);
  if (new Set(before).size !== 1 || whole.length > 3 || thousands.some((part) => part.length !== 3)) return undefined;
  return made(whole + thousands.join(''), parts.at(-1) ?? '');
}

/** Which decimal sign a cell proves; `either` when it holds a sign that could be both. */
export function decimalShown(text: string): Decimal | 'either' | undefined {
  const plain = text.replace(/^[<>≤≥~]\s*/, '').trim();
  if (/^[+-]?\d+[.,]\d+$/.test(plain)) {
    if (numberOf(plain, undefined) === 'ambiguous') return 'either';
    return plain.includes(',') ? 'comma' : 'point';
  }
  if (/^[+-]?\d{1,3}(?:,\d{3})+\.\d+$/.test(plain)) return 'point';
  if (/^[+-]?\d{1,3}(?:\.\d{3})+,\d+$/.test(plain)) return 'comma';
  if (/^[+-]?\d{1,3}(?:,\d{3}){2,}$/.test(plain)) return 'point';
  if (/^[+-]?\d{1,3}(?:\.\d{3}){2,}$/.test(plain)) return 'comma';
  return undefined;
}

/** Whether a cell is digits with at most one decimal point, sure to be read by `Number` as the laboratory means it. */
export function isPlain(cell: string, decimal: Decimal | undefined): boolean {
  let point = -1;
  const { length } = cell;
  for (let at = 0; at < length; at++) {
    const code = cell.charCodeAt(at);
    if (code >= 48 && code <= 57) continue;
    if (code !== 46 || point >= 0 || at === 0) return false;
    point = at;
  }
  if (point < 0) return length > 0 && length < 16;
  // Three digits after the point could be thousands where the point is not the decimal sign.
  return length < 20 && (decimal === 'point' || length - point !== 4 || point > 3);
}
