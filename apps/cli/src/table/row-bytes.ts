/** Letters of UTF-16 take at most this many bytes of UTF-8 each. */
const MOST_BYTES = 3;

export interface RowBytes {
  /** Adds a text at the end. */
  add(text: string): void;
  /** All that was added, in UTF-8; then it starts again. */
  take(): Uint8Array<ArrayBuffer>;
}

/**
 * Gathers rows of text as bytes. Rows kept as text until a thousand are together cost more in memory than in work: each
 * is many short pieces that live just long enough to be moved twice.
 *
 * @param size bytes to begin with; it grows as needed
 */
export function rowBytes(size: number): RowBytes {
  let bytes = Buffer.allocUnsafeSlow(size);
  let length = 0;
  return {
    add(text) {
      const most = length + text.length * MOST_BYTES;
      if (most > bytes.length) {
        const larger = Buffer.allocUnsafeSlow(Math.max(2 * bytes.length, most));
        bytes.copy(larger, 0, 0, length);
        bytes = larger;
      }
      length += bytes.write(text, length);
    },
    take() {
      const taken = bytes.subarray(0, length) as Uint8Array<ArrayBuffer>;
      bytes = Buffer.allocUnsafeSlow(size);
      length = 0;
      return taken;
    },
  };
}
