const FIRST = 'A001';

/**
 * The code to offer for the next bag: one more than the last one given, its letters and its leading zeros kept.
 *
 * @param codes given so far, in the order of check-in
 */
export function nextCode(codes: readonly string[]): string {
  const taken = new Set(codes.map((code) => code.toUpperCase()));
  const last = codes.findLast((code) => /\d$/.test(code));
  if (last === undefined) return FIRST;
  const [, letters = '', digits = '0'] = /^(.*?)(\d+)$/.exec(last) ?? [];
  for (let number = Number(digits) + 1; ; number++) {
    const code = `${letters}${String(number).padStart(digits.length, '0')}`;
    if (!taken.has(code.toUpperCase())) return code;
  }
}
