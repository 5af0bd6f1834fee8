import { type TestErrorRow, testError } from '@sorrel/almanac/test-errors';
import type { Recorder } from '../derivation/derivation.ts';
import type { Instrument, SoilTest } from './soil-test.ts';

interface InstrumentError {
  readonly sd: number;
  readonly cores: number;
  readonly mayDose: boolean;
}

const errorOf = (row: TestErrorRow): InstrumentError => ({ sd: row.sd, cores: row.cores ?? 1, mayDose: row.dose });

const byInstrument: Readonly<Record<Instrument, InstrumentError>> = {
  laboratory: errorOf(testError('laboratory')),
  'slurry-meter': errorOf(testError('slurry-meter')),
  'colour-kit': errorOf(testError('colour-kit')),
  strip: errorOf(testError('strip')),
  probe: errorOf(testError('probe')),
};

/** Spread between cores of one place when nothing is known of it (TEXT, from memory). */
export const CORE_SD = testError('core').sd;
/** The same in a dug and mixed bed, and in ground nobody digs (TEXT, from memory). */
export const CORE_SD_MIXED_BED = testError('core-mixed-bed').sd;
export const CORE_SD_IN_GROUND = testError('core-in-ground').sd;
/** Change of an unwatched bed, per square root of a year (MODEL, our judgement). */
export const YEAR_SD = testError('year').sd;

/** Error of the reading itself, which more cores do not shrink. */
export const instrumentSd = (instrument: Instrument): number => byInstrument[instrument].sd;

/** Cores as stated, or what a test of this kind is assumed to have. */
export const coresOf = (test: Pick<SoilTest, 'instrument' | 'cores'>): number =>
  test.cores !== undefined && test.cores >= 1 ? test.cores : byInstrument[test.instrument].cores;

/**
 * Whether a first dose may rest on a reading. Only a laboratory's: a home test ranks beds, catches pH below 5.5 or above
 * 7.5 and follows a bed that is being treated, but does not set a dose. A careful slurry does not either: the safer
 * reading of the reference.
 */
export const mayDose = (instrument: Instrument): boolean => byInstrument[instrument].mayDose;

/**
 * Standard deviation of one test: `s = sqrt(s_core²/n + s_lab²)`. 12 cores and a laboratory give 0.15.
 *
 * @param test instrument and number of cores
 * @param coreSd spread between cores of the place, 0.3 when unknown
 * @returns sd in pH units, without the error of any conversion
 */
export function testSd(
  test: Pick<SoilTest, 'instrument' | 'cores'>,
  coreSd: number = CORE_SD,
  recorder?: Recorder,
): number {
  const lab = byInstrument[test.instrument].sd;
  const cores = coresOf(test);
  const sd = Math.sqrt((coreSd * coreSd) / cores + lab * lab);
  if (recorder)
    recorder.step({
      symbol: 's',
      title: 'Error of the soil test',
      formula: 's = sqrt(s_core^2/n + s_lab^2)',
      terms: [
        { symbol: 's_core', value: coreSd, unit: 'pH', origin: coreSd === CORE_SD ? 'choice' : 'entered' },
        { symbol: 'n', value: cores, unit: '1', origin: test.cores === undefined ? 'choice' : 'entered' },
        {
          symbol: 's_lab',
          value: lab,
          unit: 'pH',
          origin: 'table',
          source: testError(test.instrument).sources[0] ?? '',
        },
      ],
      value: sd,
      unit: 'pH',
      sources: testError(test.instrument).sources,
      basis: testError(test.instrument).basis,
    });
  return sd;
}
