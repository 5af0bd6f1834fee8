/** A number of a derivation with its unit: four figures, powers of ten only for the very small and the very large. */
export function figure(value: number | string, unit: string): string {
  const text = typeof value === 'string' ? value : number(value);
  return unit === '' || unit === '1' ? text : `${text} ${unit}`;
}

function number(value: number): string {
  if (!Number.isFinite(value)) return String(value);
  const size = Math.abs(value);
  if (size !== 0 && (size < 1e-4 || size >= 1e6)) {
    const [digits, power] = value.toExponential(2).split('e');
    return `${digits} × 10^${Number(power)}`;
  }
  return String(Number(value.toPrecision(4)));
}
