/**
 * Letters of the bytes 0x80 to 0x9f (WHATWG Encoding Standard, index windows-1252). Some releases of Node read this
 * encoding as ISO 8859-1 and turn these letters into control signs, so it is read here.
 */
const UPPER =
  '\u20ac\u0081\u201a\u0192\u201e\u2026\u2020\u2021\u02c6\u2030\u0160\u2039\u0152\u008d\u017d\u008f' +
  '\u0090\u2018\u2019\u201c\u201d\u2022\u2013\u2014\u02dc\u2122\u0161\u203a\u0153\u009d\u017e\u0178';

const PIECE = 8192;

/** Text of bytes in windows-1252, in which every byte is one letter. */
export function windows1252(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += PIECE) {
    const piece = bytes.subarray(at, at + PIECE);
    const codes = new Uint16Array(piece.length);
    for (let i = 0; i < piece.length; i++) {
      const byte = piece[i] as number;
      codes[i] = byte >= 0x80 && byte < 0xa0 ? UPPER.charCodeAt(byte - 0x80) : byte;
    }
    text += String.fromCharCode(...codes);
  }
  return text;
}
