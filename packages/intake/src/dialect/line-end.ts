/** How lines end: with a line feed (also after a carriage return), or with a carriage return alone as on old Macs. */
export type LineEnd = 'feed' | 'return';

/** Told from the beginning of the file: a line feed inside a cell is no line end of an old Mac's file. */
export function lineEndOf(text: string): LineEnd {
  const feeds = text.split('\n').length - 1;
  const alone = text.split(/\r(?!\n)/).length - 1;
  return alone > feeds ? 'return' : 'feed';
}

/** Text with every line ended by a line feed. */
export const withFeeds = (text: string, lineEnd: LineEnd): string =>
  lineEnd === 'return' ? text.replaceAll('\r', '\n') : text;
