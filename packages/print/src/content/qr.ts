import { correction, generate } from 'lean-qr';
import { toSvgPath } from 'lean-qr/extras/svg';

/** Modules of white around a code (ISO/IEC 18004). */
const QUIET = 4;

/**
 * A QR code (ISO/IEC 18004) with its quiet zone, as SVG of one outline.
 *
 * @param text what the code says; level Q at least, so that a quarter of a muddy label may be lost
 * @throws Error when the text is longer than a QR code can hold (about 1600 letters)
 */
export function qrSvg(text: string): string {
  const code = generate(text, { minCorrectionLevel: correction.Q });
  const side = code.size + 2 * QUIET;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${-QUIET} ${-QUIET} ${side} ${side}"><path d="${toSvgPath(code)}"/></svg>`;
}
