import type { Encoding } from './encoding.ts';
import { windows1252 } from './windows-1252.ts';

/** Turns bytes into text piece by piece; letters cut in two by the end of a piece are put together again. */
export interface TextReader {
  push(bytes: Uint8Array): string;
  end(): string;
}

/**
 * Reads text in one encoding. A byte order mark is dropped; bytes that are no letter become U+FFFD, which the rows
 * reader reports.
 */
export function textReader(encoding: Encoding): TextReader {
  if (encoding === 'windows-1252') return { push: windows1252, end: () => '' };
  const decoder = new TextDecoder(encoding);
  return { push: (bytes) => decoder.decode(bytes, { stream: true }), end: () => decoder.decode() };
}
