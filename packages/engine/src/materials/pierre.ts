import { type PierreElement, pierreFactors } from '@sorrel/almanac/pierre-factors';
import type { Recorder, Term } from '../derivation/derivation.ts';
import type { Fraction } from '../units/si.ts';

/** Elements of a fertilizer as mass fractions; oxides as labels print them are allowed. */
export type Contents = Partial<Readonly<Record<PierreElement | 'P2O5' | 'K2O', Fraction>>>;

/** kg of the element per kg of the oxide a label prints. */
const OXIDES = { P2O5: { element: 'P', share: 0.43642 }, K2O: { element: 'K', share: 0.83015 } } as const;

const factors = new Map<string, number>(
  pierreFactors.map((row) => [row.element, row.sign === 'acid' ? -row.kgCaco3PerKg : row.kgCaco3PerKg]),
);

/**
 * Pierre sum: base or acid a complete fertilizer leaves, kg CaCO3 per kg (negative is acid):
 * `E = 2.497 Ca + 4.118 Mg + 1.280 K + 2.177 Na − 1.786 N − 3.122 S − 1.412 Cl − 1.616 P`.
 *
 * Valid for soluble salts. Not for bone meal or rock phosphate: their calcium is phosphate. The nitrogen factor assumes
 * half of it leached; use `nitrogenAcidity` for another share.
 *
 * @param contents mass fractions, each 0 to 1; several compounds of an element may be given together (P and P2O5 add up)
 * @source PIERRE33 (memory), checked against ANR174
 */
export function pierreSum(contents: Contents, recorder?: Recorder): number {
  let sum = 0;
  const terms: Term[] | undefined = recorder ? [] : undefined;
  for (const [name, share] of Object.entries(contents)) {
    const oxide = name === 'P2O5' || name === 'K2O' ? OXIDES[name] : undefined;
    const factor = (factors.get(oxide?.element ?? name) ?? 0) * (oxide?.share ?? 1);
    sum += factor * share;
    terms?.push(
      { symbol: name, value: share, unit: 'kg/kg', origin: 'entered' },
      { symbol: `p_${name}`, value: factor, unit: 'kg CaCO3/kg', origin: 'table', source: 'PIERRE33' },
    );
  }
  if (recorder && terms)
    recorder.step({
      symbol: 'E_P',
      title: 'Acid or base left by the fertilizer',
      formula: 'E_P = sum of (share · factor)',
      terms,
      value: sum,
      unit: 'kg CaCO3/kg',
      sources: ['PIERRE33'],
      basis: 'memory',
    });
  return sum;
}
