import type { Message } from '../derivation/message.ts';
import type { SoilTest } from '../evidence/soil-test.ts';
import type { ParameterSet } from '../forecast/parameter-set.ts';
import type { ForecastApplication, Weather, YearlyInputs } from '../forecast/types.ts';
import type { Reading } from '../requirement/method.ts';
import type { BufferCurve, Layer, LogEstimate, Medium, PhEstimate } from '../soil/soil.ts';
import type { Fraction, IsoDate, Ph } from '../units/si.ts';

/** The whole record of one place. Order does not matter: learning starts afresh from it every time. */
export interface BedRecord {
  /** Soil tests and home readings. */
  readonly tests: readonly SoilTest[];
  /** Everything put on, before fineness: the grains decide when it works. */
  readonly applications: readonly ForecastApplication[];
  readonly layer: Layer;
  /** What everything but the bed's own answers says of its resistance: the prior. Must not hold an own response yet. */
  readonly curve: BufferCurve;
  readonly medium: Medium;
  readonly container?: boolean;
  readonly weather?: Weather;
  readonly yearly?: YearlyInputs;
}

export interface LearnOptions {
  /** Day for which the present pH is wanted; later entries are left out. */
  readonly today: IsoDate;
  readonly seed?: number;
  /** pH to which `Reading.pure` is worked out; default 6.5. */
  readonly targetPh?: Ph;
  /** Members of `parameters`; default 500. */
  readonly members?: number;
  /** What was known of the pH before any test; default 6.2 ± 1.2. */
  readonly before?: PhEstimate;
}

/** A figure before and after learning, on the scale of its logarithm. */
export interface Learning {
  readonly prior: LogEstimate;
  /** Middle of the posterior: half the chance lies on each side. */
  readonly median: number;
  /** Mean and standard deviation of the natural logarithm. */
  readonly meanLog: number;
  readonly sdLog: number;
  /** Middle 80 %. */
  readonly low: number;
  readonly high: number;
}

/** How much the bed resists, against what its texture and tests suggested: 1.4 needs 40 % more for the same change. */
export interface Resistance extends Learning {
  readonly factor: number;
  readonly factorLow: number;
  readonly factorHigh: number;
  /** Chance that it resists more than suggested. */
  readonly chanceMore: Fraction;
  /** True when a retest asked for more than the factor 2 that one retest may teach. */
  readonly capped: boolean;
  /** Median and standard deviation of the logarithm before the cap: what the readings themselves ask for. */
  readonly freeMedian: number;
  readonly freeSdLog: number;
  /** False when the readings hardly narrow what was believed before. */
  readonly taught: boolean;
}

export type TestRole =
  /** Teaches everything. */
  | 'learned from'
  /** Tells the pH of its day but must not teach how much the soil resists. */
  | 'pH only';

/** Replicates of one day by one laboratory or gardener, as the learning sees them. */
export interface LearnedTest {
  readonly date: IsoDate;
  readonly ids: readonly string[];
  readonly ph: Ph;
  readonly sd: number;
  readonly role: TestRole;
  /** What all other readings let expect on that day, with its error. */
  readonly expected?: PhEstimate;
  /** Three standard errors or more from what all other readings let expect. It still counts, but less. */
  readonly outlier: boolean;
}

export interface LeftOut {
  readonly test: SoilTest;
  readonly reason: Message;
}

/** Change over time with nothing in between that acts quickly. */
export interface Trend {
  readonly from: IsoDate;
  readonly to: IsoDate;
  readonly readings: number;
  /** pH a year. */
  readonly slope: number;
  readonly sd: number;
  /** Larger than 1.96 standard errors. */
  readonly real: boolean;
}

/** Whether two tests tell a change from chance. */
export interface Change {
  readonly from: IsoDate;
  readonly to: IsoDate;
  readonly change: number;
  /** Smallest difference that counts as one, 1.96·√(s1² + s2²). */
  readonly needed: number;
  readonly real: boolean;
}

export interface Present extends PhEstimate {
  readonly date: IsoDate;
  readonly median: Ph;
  readonly bands: readonly { readonly share: Fraction; readonly low: Ph; readonly high: Ph }[];
}

/** What the record of a place has taught. */
export interface Learned {
  /** Least buffer capacity at usual effectiveness of what is put on, kg CaCO3/kg/pH. */
  readonly resistance: Resistance;
  /** Speed of lime (m/day) or of sulfur (kg/m²/day), when grains were put on. */
  readonly rate?: Learning & { readonly of: 'lime' | 'sulfur'; readonly factor: number };
  /** Acid the place makes by itself, kg CaCO3/m²/yr. */
  readonly drift: Learning;
  /** Undefined without a usable test. */
  readonly present?: Present;
  /** The prior curve moved by what was learned. */
  readonly curve: BufferCurve;
  /** What the bed's answers alone say, without the prior: to be reconciled with the other readings. */
  readonly reading?: Reading;
  /** Members for a forecast from `today` on. */
  readonly parameters?: ParameterSet;
  readonly tests: readonly LearnedTest[];
  readonly leftOut: readonly LeftOut[];
  readonly trend?: Trend;
  readonly change?: Change;
  /** Applications that at least one later test has judged. */
  readonly judged: number;
  readonly messages: readonly Message[];
  /** Members weighed and how many equally weighted ones they are worth; 0 when nothing was to be learned. */
  readonly sampled: { readonly members: number; readonly effective: number; readonly seed: number };
}
