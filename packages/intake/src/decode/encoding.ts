/** Ways of writing letters as bytes that laboratories' files come in. */
export type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

export interface EncodingFound {
  readonly encoding: Encoding;
  /** How it was told: by a mark at the start, because all bytes fit, by zero bytes, or because nothing else fits. */
  readonly by: 'mark' | 'fits' | 'zeros' | 'nothing-else';
}

/** Shares of zero bytes above which text is taken for two bytes a letter: plain Latin text has one zero in each pair. */
const ZEROS = 0.3;
const LOOKED_AT = 4096;

/**
 * Tells in which encoding a text is written.
 *
 * @param bytes the file, or its beginning
 * @param whole false when more bytes follow, so that a letter cut in two at the end is no fault
 */
export function encodingOf(bytes: Uint8Array, whole = true): EncodingFound {
  const [a, b, c] = bytes;
  if (a === 0xef && b === 0xbb && c === 0xbf) return { encoding: 'utf-8', by: 'mark' };
  if (a === 0xff && b === 0xfe) return { encoding: 'utf-16le', by: 'mark' };
  if (a === 0xfe && b === 0xff) return { encoding: 'utf-16be', by: 'mark' };
  const seen = Math.min(bytes.length, LOOKED_AT) & ~1;
  let [even, odd] = [0, 0];
  for (let at = 0; at < seen; at += 2) {
    if (bytes[at] === 0) even += 1;
    if (bytes[at + 1] === 0) odd += 1;
  }
  if (odd > (seen / 2) * ZEROS && even < odd / 4) return { encoding: 'utf-16le', by: 'zeros' };
  if (even > (seen / 2) * ZEROS && odd < even / 4) return { encoding: 'utf-16be', by: 'zeros' };
  return isUtf8(bytes, whole) ? { encoding: 'utf-8', by: 'fits' } : { encoding: 'windows-1252', by: 'nothing-else' };
}

function isUtf8(bytes: Uint8Array, whole: boolean): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes, { stream: !whole });
    return true;
  } catch {
    return false;
  }
}
