/** How lines end: with a line feed (also after a carriage return), or with a carriage return alone as on old Macs. */
export type LineEnd = 'feed' | 'return';

/** Told from the beginning of the file. */
export const lineEndOf = (text: string): LineEnd => (!text.includes('\n') && text.includes('\r') ? 'return' : 'feed');

/** Text with every line ended by a line feed. */
export const withFeeds = (text: string, lineEnd: LineEnd): string =>
  lineEnd === 'return' ? text.replaceAll('\r', '\n') : text;
