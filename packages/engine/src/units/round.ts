/** Rounded to a number of significant digits, 1 to 15. Zero stays zero. */
export const significant = (value: number, digits: number): number => Number(value.toPrecision(digits));

/** As people write it, below 1e21: no exponent, no trailing zeros, no thousands mark (which readers take for a decimal one). */
export function plainNumber(value: number): string {
  const text = String(value);
  return text.includes('e') ? value.toFixed(20).replace(/\.?0+$/, '') : text;
}
