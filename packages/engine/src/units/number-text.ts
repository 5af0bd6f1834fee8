/** A number at the start of a text, with what follows it. */
export interface ReadNumber {
  readonly state: 'number';
  readonly value: number;
  readonly rest: string;
}

export type NumberReading =
  | ReadNumber
  | { readonly state: 'none' }
  /** `1,200` is twelve hundred to one reader and one and a fifth to another. */
  | { readonly state: 'ambiguous'; readonly readings: readonly [string, string] };

const vulgar: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/**
 * The text with one way of writing each thing: fractions as 1/2, straight quotes for feet and inches, plain
 * minus, digits for superscripts, u for micro. Case and spaces stay.
 */
export function plainText(text: string): string {
  // Most of what is typed needs nothing, and normalising costs more than reading.
  if (/^(?:[!-&(-~]| (?! ))*$/.test(text)) return text.trim();
  return text
    .replace(/[¼½¾⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/g, (sign) => ` ${vulgar[sign]}`)
    .normalize('NFKC')
    .replace(/[⁄∕]/g, '/')
    .replace(/[−–—‐‑]/g, '-')
    .replace(/[“”]|′′|’’|''/g, '"')
    .replace(/[’‘′]/g, "'")
    .replace(/[µμ]/g, 'u')
    .replace(/\s+/g, ' ')
    .trim();
}

const fraction = /^([+-]?)\s?(?:(\d{1,6})[ -])?(\d{1,6}) ?\/ ?(\d{1,6})(?!\d)/;
const spaced = /^[+-]?\d{1,3}(?: \d{3})+(?![\d/])(?:[.,]\d+)?/;
const plain = /^[+-]?(?:\d[\d.,]*|[.,]\d+)(?:e[+-]?\d{1,3}(?!\d))?/i;

/**
 * Reads the number a text starts with, after `plainText`: `2.5`, `2,5`, `.5`, `1/2`, `1 1/2`, `1-1/2`, `1 200`,
 * `1,200.5`, `1.200,5`, `1,200,000`, `1e3`. One comma with exactly three digits behind it is refused as
 * ambiguous unless the part before it is zero; one point is always a decimal point.
 */
export function readNumber(text: string): NumberReading {
  const broken = fraction.exec(text);
  if (broken) {
    const [match, sign, whole = '0', over = '0', under = '1'] = broken;
    const value = Number(whole) + Number(over) / Number(under);
    return Number.isFinite(value)
      ? { state: 'number', value: sign === '-' ? -value : value, rest: text.slice(match.length) }
      : { state: 'none' };
  }
  const token = spaced.exec(text)?.[0] ?? plain.exec(text)?.[0];
  if (token === undefined) return { state: 'none' };
  const rest = text.slice(token.length);
  const readings = decimalReadings(token.replaceAll(' ', ''));
  const [first, second] = readings;
  if (first === undefined) return { state: 'none' };
  if (second !== undefined) return { state: 'ambiguous', readings: [first, second] };
  const value = Number(first);
  return Number.isFinite(value) ? { state: 'number', value, rest } : { state: 'none' };
}

const grouped = (text: string, mark: string): boolean =>
  text.split(mark).every((part, index) => (index === 0 ? /^[+-]?\d{1,3}$/ : /^\d{3}$/).test(part));

/** The ways of reading a token of digits, points and commas, as JavaScript numbers write them; none when it is no number. */
function decimalReadings(token: string): string[] {
  const [body = '', exponent] = token.toLowerCase().split('e');
  const end = exponent === undefined ? '' : `e${exponent}`;
  const points = body.split('.').length - 1;
  const commas = body.split(',').length - 1;
  if (points > 0 && commas > 0) {
    const mark = body.lastIndexOf('.') > body.lastIndexOf(',') ? '.' : ',';
    const [whole = '', part = '', ...more] = body.split(mark);
    const other = mark === '.' ? ',' : '.';
    return more.length === 0 && grouped(whole, other) ? [`${whole.replaceAll(other, '')}.${part}${end}`] : [];
  }
  const mark = commas > 0 ? ',' : '.';
  const count = commas + points;
  if (count > 1) return grouped(body, mark) ? [body.replaceAll(mark, '') + end] : [];
  const decimal = body.replace(',', '.') + end;
  if (commas === 1 && grouped(body, ',') && !/^[+-]?0+,/.test(body)) return [body.replace(',', '') + end, decimal];
  return [decimal];
}
