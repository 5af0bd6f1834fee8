/** Where a long word may break (U+200B, drawn as nothing). */
export const BREAK = '\u200b';

/** A word this long may not fit its column. */
const LONG = 25;
const longWord = /[^\s\u200b]{25,}/gu;
const hasLongWord = /[^\s\u200b]{25}/;
const plain = /^[ -~\u00a1-\u024f\u2010-\u2027]*$/;
const graphemes = new Intl.Segmenter('und', { granularity: 'grapheme' });

/**
 * Text of people made fit for paper: broken halves of characters, control characters and marks that turn the reading
 * direction of what follows are taken out, and a word longer than a line may break. Markup needs no escape: all text
 * reaches the typesetter as data and is never read as source.
 */
export function safeText(text: string): string {
  // Nearly every text is plain; a pile of handouts has a hundred thousand of them.
  if (plain.test(text) && (text.length < LONG || !hasLongWord.test(text))) return text;
  return text
    .replace(/\p{Cs}|\p{Cn}/gu, '\ufffd')
    .replace(/[\u202a-\u202e\u2066-\u2069\ufeff]/gu, '')
    .replace(/[\p{Cc}\u2028\u2029]+/gu, ' ')
    .replace(longWord, breakable);
}

/** A place to break after every twelve characters, never inside one. */
function breakable(word: string): string {
  let broken = '';
  let count = 0;
  for (const { segment } of graphemes.segment(word)) {
    if (count > 0 && count % 12 === 0) broken += BREAK;
    broken += segment;
    count++;
  }
  return broken;
}

/** The same object with every text in it made safe. */
export const safeData = (data: object): object =>
  Object.fromEntries(Object.entries(data).map(([key, each]) => [key, safeValue(each)]));

function safeValue(value: unknown): unknown {
  if (typeof value === 'string') return safeText(value);
  if (Array.isArray(value)) return value.map(safeValue);
  return typeof value === 'object' && value !== null ? safeData(value) : value;
}
