import { reportWords } from '@sorrel/almanac/report-words';

type Kind = (typeof reportWords)[number]['kind'];

const byKind = new Map<Kind, Map<string, string>>();
for (const { kind, value, spellings } of reportWords) {
  const known = byKind.get(kind) ?? new Map<string, string>();
  byKind.set(kind, known);
  for (const spelling of [value, ...spellings]) known.set(spelling.toLowerCase(), value);
}

/** The words of one kind and what each says, in small letters. */
export const wordsOf = (kind: Kind): ReadonlyMap<string, string> => byKind.get(kind) ?? new Map();

const blank = wordsOf('blank');
const notDetected = wordsOf('not-detected');
const broken = wordsOf('broken');
const total = wordsOf('total');
const LONGEST_WORD = 24;

/** What a cell that is no figure says, when it says one of the usual things. */
export function usualWord(cell: string): 'blank' | 'not-detected' | 'broken' | undefined {
  if (cell === '') return 'blank';
  if (cell.length > LONGEST_WORD) return undefined;
  const word = cell.toLowerCase();
  if (blank.has(word)) return 'blank';
  if (notDetected.has(word)) return 'not-detected';
  return broken.has(word) || /^#+$/.test(word) ? 'broken' : undefined;
}

const firstLetters = new Set([...total.keys()].map((word) => word.charCodeAt(0)));

/** Whether a cell heads a row of totals, averages or the like, which is no sample. */
export function headsTotals(written: string): boolean {
  const cell = written.charCodeAt(0) <= 32 ? written.trim() : written;
  // Nearly all names start with another letter; asking is cheaper than looking the word up.
  if (cell.length < 2 || cell.length > LONGEST_WORD || !firstLetters.has(cell.charCodeAt(0) | 32)) return false;
  const word = cell.toLowerCase();
  return total.has(word) || total.has(word.replace(/[\s:=]+$/, ''));
}
