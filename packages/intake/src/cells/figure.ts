import { type Decimal, numberOf } from './number.ts';
import { usualWord, wordsOf } from './words.ts';

/** What a cell of figures says. */
export type Figure =
  | { readonly kind: 'number'; readonly value: number; readonly unit?: string }
  /** `<5`: less than the laboratory can tell. Never used as 5. */
  | { readonly kind: 'below'; readonly limit: number }
  | { readonly kind: 'above'; readonly limit: number }
  | { readonly kind: 'range'; readonly low: number; readonly high: number; readonly unit?: string }
  /** `1,250` where nobody said which sign stands before the tenths. */
  | { readonly kind: 'ambiguous' }
  | { readonly kind: 'blank' | 'not-detected' | 'broken' | 'text' };

const flags = wordsOf('flag');
const LEAD = /^(<=?|>=?|≤|≥|less than|more than|under|over|below|above)\s*(.+)$/i;
const NUMBER = /^[+-]?(?:\d[\d.,]*(?:[ \u00a0\u2009\u202f'\u2019]\d{3})*(?:[.,]\d+)?|[.,]\d+)(?:e[+-]?\d{1,2})?/i;
const TO = /^\s*(?:-|–|—|to|bis|à)\s*/i;
const LONGEST = 60;

/**
 * Reads a cell of figures: numbers in either notation, `<5`, ranges, words for nothing, a unit or a rating behind the
 * number.
 *
 * @param cell without blanks at its ends
 * @param decimal the file's decimal sign, when it is known
 */
export function readFigure(cell: string, decimal: Decimal | undefined): Figure {
  const word = usualWord(cell);
  if (word !== undefined) return { kind: word };
  if (cell.length > LONGEST) return { kind: 'text' };
  const limit = LEAD.exec(cell);
  if (limit !== null) return readLimit(limit[1] ?? '', readFigure((limit[2] ?? '').trim(), decimal));
  const written = cell.replace(/^[~≈=]\s*/, '').replace(/^'(?=[\d.,+-])/, '');
  const match = NUMBER.exec(written)?.[0];
  if (match === undefined) return { kind: 'text' };
  const value = numberOf(match, decimal);
  if (value === undefined) return { kind: 'text' };
  const rest = written.slice(match.length).trim();
  if (value === 'ambiguous') return { kind: 'ambiguous' };
  if (rest === '') return { kind: 'number', value };
  const joined = TO.exec(rest)?.[0];
  if (joined !== undefined) {
    const second = readFigure(rest.slice(joined.length), decimal);
    if (second.kind !== 'number' || second.value < value) return { kind: 'text' };
    const { unit } = second;
    return { kind: 'range', low: value, high: second.value, ...(unit === undefined ? {} : { unit }) };
  }
  const tail = rest.replace(/^\((.*)\)$/, '$1').trim();
  return flags.has(tail.toLowerCase()) && tail !== 'M'
    ? { kind: 'number', value }
    : { kind: 'number', value, unit: tail };
}

function readLimit(sign: string, bound: Figure): Figure {
  if (bound.kind !== 'number') return bound.kind === 'ambiguous' ? bound : { kind: 'text' };
  return /^(?:<|≤|less|under|below)/i.test(sign)
    ? { kind: 'below', limit: bound.value }
    : { kind: 'above', limit: bound.value };
}
