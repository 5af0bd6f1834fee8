/** Columns of the terminal, at most 80 so that lines stay easy to read; 80 when the output is piped. */
export const pageWidth = (): number => Math.max(40, Math.min(process.stdout.columns ?? 80, 80));

/** Whether the terminal can show more than ASCII; `--ascii` and a locale without UTF-8 say no. */
export function canUnicode(asked: boolean | undefined, env: NodeJS.ProcessEnv = process.env): boolean {
  if (asked) return false;
  const locale = env.LC_ALL || env.LC_CTYPE || env.LANG || '';
  return locale === '' ? process.platform !== 'win32' || env.WT_SESSION !== undefined : /utf-?8/i.test(locale);
}

// Built on first use: most output is plain and never needs it.
let segmenter: Intl.Segmenter | undefined;
function graphemes(text: string): Iterable<{ readonly segment: string }> {
  segmenter ??= new Intl.Segmenter('en', { granularity: 'grapheme' });
  return segmenter.segment(text);
}
/** Letters that may take no cell or two: accents that stand alone, joined signs, East Asian letters, emoji. */
const UNEVEN = /[\u0300-\u036f\u0483-\u0489\u0590-\u0eff\u1100-\u115f\u200b-\u200f\u2e80-\uffff]/;
const WIDE = /[\u1100-\u115f\u2e80-\uff60\uffe0-\uffe6]|\p{Emoji_Presentation}/u;

/** Cells a text takes up; everything Sorrel prints is one cell wide but for wide East Asian letters in names. */
export function textWidth(text: string): number {
  if (!UNEVEN.test(text)) return text.length;
  let cells = 0;
  for (const { segment } of graphemes(text)) cells += WIDE.test(segment) ? 2 : 1;
  return cells;
}

/** Breaks a text into lines no wider than `width`, without breaking words that fit. */
export function wrap(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/)) {
    if (line !== '' && textWidth(line) + 1 + textWidth(word) > width) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  lines.push(line);
  return lines;
}

/** A wrapped text behind a label or bullet, the further lines set in under the first. */
export function hanging(label: string, text: string, indent: number, width = pageWidth()): string {
  const inset = ' '.repeat(indent + textWidth(label));
  const [first = '', ...more] = wrap(text, width - inset.length);
  return [`${' '.repeat(indent)}${label}${first}`, ...more.map((line) => inset + line)].join('\n');
}

/** A wrapped text, its further lines set in a little more than the first. */
export function paragraph(text: string, indent: number, hang = 2, width = pageWidth()): string {
  const [first = '', ...more] = wrap(text, width - indent - hang);
  return [' '.repeat(indent) + first, ...more.map((line) => ' '.repeat(indent + hang) + line)].join('\n');
}

export const pad = (text: string, width: number): string => text + ' '.repeat(Math.max(0, width - textWidth(text)));
export const padLeft = (text: string, width: number): string => ' '.repeat(Math.max(0, width - textWidth(text))) + text;

/** A text cut to a width, with a mark that it was. */
export function cut(text: string, width: number, mark: string): string {
  if (textWidth(text) <= width) return text;
  let kept = '';
  for (const { segment } of graphemes(text)) {
    if (textWidth(kept + segment + mark) > width) break;
    kept += segment;
  }
  return kept + mark;
}
