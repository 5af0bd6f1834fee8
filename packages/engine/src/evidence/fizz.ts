import { type FizzRow, fizz } from '@sorrel/almanac/fizz';
import type { Fraction } from '../units/si.ts';
import type { AcidFizz, VinegarFizz } from './soil-test.ts';

/** Carbonate as CaCO3, mass fractions. */
export interface CarbonateRange {
  readonly fraction: Fraction;
  readonly low: Fraction;
  readonly high: Fraction;
}

const percent = (value: number | undefined): Fraction => (value ?? 0) / 100;

const rangeOf = (kind: FizzRow['kind'], name: string): CarbonateRange | undefined => {
  const row = fizz.find((one) => one.kind === kind && one.class === name);
  if (row?.best === undefined) return undefined;
  return { fraction: percent(row.best), low: percent(row.low), high: percent(row.high) };
};

const acid = new Map(fizz.filter((row) => row.kind === 'acid').map((row) => [row.class, rangeOf('acid', row.class)]));
const vinegar = new Map(
  fizz.filter((row) => row.kind === 'vinegar').map((row) => [row.class, rangeOf('vinegar', row.class)]),
);

/** Carbonate by fizz with cold 1 M hydrochloric acid, read after 2 minutes (SCMA_19D1; the top class from memory). */
export const carbonateByAcid = (seen: AcidFizz): CarbonateRange | undefined => acid.get(seen);

/** Carbonate by fizz with vinegar (KSU-F). Silence proves nothing, for vinegar is weak: undefined. */
export const carbonateByVinegar = (seen: VinegarFizz): CarbonateRange | undefined => vinegar.get(seen);

/** The class that a description names, such as `low foam`, whichever of its words are used. */
export function fizzClass(kind: FizzRow['kind'], appearance: string): FizzRow | undefined {
  const words = appearance.trim().toLowerCase();
  const rows = fizz.filter((row) => row.kind === kind);
  return (
    rows.find((row) => row.class === words || row.appearance.includes(words) || row.appearance.join(', ') === words) ??
    rows.find((row) => words.split(',').every((part) => row.appearance.includes(part.trim())))
  );
}
