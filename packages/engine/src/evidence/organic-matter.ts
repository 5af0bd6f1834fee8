import type { Recorder } from '../derivation/derivation.ts';
import type { Fraction } from '../units/si.ts';
import type { SoilTest } from './soil-test.ts';

/** kg organic matter per kg carbon: 2.0 is better supported (PRIBYL_2010); 1.724 only to reproduce an older report (INSPIRE_OC). */
export const MATTER_PER_CARBON = 2;
export const MATTER_PER_CARBON_OLDER = 1.724;

/** Organic matter from carbon, both mass fractions. `OM = f·OC`. */
export const matterFromCarbon = (carbon: Fraction, factor: number = MATTER_PER_CARBON): Fraction => carbon * factor;

/** Organic carbon from matter, both mass fractions. `OC = OM/f`. */
export const carbonFromMatter = (matter: Fraction, factor: number = MATTER_PER_CARBON): Fraction => matter / factor;

type Organic = Pick<SoilTest, 'organicMatter' | 'organicCarbon'>;

/** Organic matter as measured, else from carbon times 2; undefined when neither is known. */
export const organicMatterOf = (test: Organic): Fraction | undefined =>
  test.organicMatter ?? (test.organicCarbon === undefined ? undefined : matterFromCarbon(test.organicCarbon));

/**
 * Organic carbon as measured, else organic matter halved; undefined when neither is known. The smaller carbon of the two
 * conventions gives the smaller dose.
 */
export function organicCarbonOf(test: Organic, recorder?: Recorder): Fraction | undefined {
  if (test.organicCarbon !== undefined) return test.organicCarbon;
  if (test.organicMatter === undefined) return undefined;
  const carbon = carbonFromMatter(test.organicMatter);
  if (recorder)
    recorder.step({
      symbol: 'OC',
      title: 'Organic carbon',
      formula: 'OC = OM / f',
      terms: [
        { symbol: 'OM', value: test.organicMatter, unit: 'kg/kg', origin: 'entered' },
        { symbol: 'f', value: MATTER_PER_CARBON, unit: '1', origin: 'table', source: 'PRIBYL_2010' },
      ],
      value: carbon,
      unit: 'kg/kg',
      sources: ['PRIBYL_2010'],
      basis: 'read',
    });
  return carbon;
}
