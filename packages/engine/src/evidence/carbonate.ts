import type { Fraction, Ph } from '../units/si.ts';
import { type CarbonateRange, carbonateByAcid, carbonateByVinegar } from './fizz.ts';
import type { SoilTest } from './soil-test.ts';

export interface CarbonateEvidence extends CarbonateRange {
  readonly how: 'measured' | 'acid fizz' | 'vinegar fizz' | 'not tested';
  readonly test?: SoilTest;
}

const NOT_TESTED: CarbonateEvidence = { fraction: 0, low: 0, high: 1, how: 'not tested' };
/** Relative error of a measured carbonate; our judgement. */
const MEASURED_SPREAD = 0.2;
/** Smallest error of a measured carbonate, kg/kg. */
const MEASURED_LEAST: Fraction = 0.002;

const newest = (tests: readonly SoilTest[], has: (test: SoilTest) => boolean): SoilTest | undefined => {
  let found: SoilTest | undefined;
  for (const test of tests) if (has(test) && (found === undefined || test.date > found.date)) found = test;
  return found;
};

const looksAtCarbonate = (test: SoilTest): boolean =>
  test.carbonate !== undefined || test.acidFizz !== undefined || test.vinegarFizz !== undefined;

const saysSomething = (test: SoilTest): boolean =>
  test.vinegarFizz !== undefined && carbonateByVinegar(test.vinegarFizz) !== undefined;

const told = (
  { fraction, low, high }: CarbonateRange,
  how: CarbonateEvidence['how'],
  test: SoilTest,
): CarbonateEvidence => ({ fraction, low, high, how, test });

/**
 * Free lime in the soil, as CaCO3 per kg: the newest measured figure, else the newest acid fizz, else the newest vinegar
 * fizz. Vinegar that stays silent says nothing.
 *
 * @returns best guess and range; `not tested` (0, range 0 to 1) when nothing speaks
 */
export function carbonateOf(tests: readonly SoilTest[]): CarbonateEvidence {
  if (!tests.some(looksAtCarbonate)) return NOT_TESTED;
  const measured = newest(tests, (test) => test.carbonate !== undefined);
  if (measured?.carbonate !== undefined) {
    const spread = Math.max(MEASURED_LEAST, MEASURED_SPREAD * measured.carbonate);
    return {
      fraction: measured.carbonate,
      low: Math.max(0, measured.carbonate - spread),
      high: Math.min(1, measured.carbonate + spread),
      how: 'measured',
      test: measured,
    };
  }
  const acid = newest(tests, (test) => test.acidFizz !== undefined);
  const byAcid = acid?.acidFizz === undefined ? undefined : carbonateByAcid(acid.acidFizz);
  if (acid && byAcid) return told(byAcid, 'acid fizz', acid);
  const vinegar = newest(tests, saysSomething);
  const byVinegar = vinegar?.vinegarFizz === undefined ? undefined : carbonateByVinegar(vinegar.vinegarFizz);
  if (vinegar && byVinegar) return told(byVinegar, 'vinegar fizz', vinegar);
  return NOT_TESTED;
}

/** True when nothing is known of free lime and the pH is high enough for it to matter. */
export const limeUnknown = (evidence: CarbonateEvidence, ph: Ph, from: Ph): boolean =>
  evidence.how === 'not tested' && ph >= from;
