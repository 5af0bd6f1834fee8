/** With its sign, and no minus before a zero. */
export const signed = (off: number): string => {
  const text = Math.abs(off).toFixed(2);
  return Number(text) === 0 ? text : `${off < 0 ? '−' : '+'}${text}`;
};
