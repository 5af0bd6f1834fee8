import type { Recorder } from '../derivation/derivation.ts';
import { YEAR_SD } from '../evidence/test-error.ts';
import type { ParameterName } from '../forecast/parameter-set.ts';
import { P } from '../forecast/parameters.ts';
import { createRandom } from '../forecast/random.ts';
import type { BufferCurve, LogEstimate } from '../soil/soil.ts';
import { dayNumber } from '../units/calendar.ts';
import { type BedModel, bedModel } from './bed-model.ts';
import { checkRecord } from './check.ts';
import { infer } from './infer.ts';
import { forecastMembers } from './members.ts';
import { messagesOf } from './messages.ts';
import { type Odd, oddReadings } from './outliers.ts';
import { presentOf } from './present.ts';
import { ownResponse } from './reading.ts';
import { recordLearning } from './record.ts';
import { learningOf, resistanceOf, unlearned } from './resistance.ts';
import type { Sample } from './sampler.ts';
import { type Series, seriesOf, waitFor } from './series.ts';
import { changeOf, trendOf, withDoubt } from './trend.ts';
import type { BedRecord, Learned, LearnedTest, LearnOptions, Resistance } from './types.ts';
import type { Readings } from './walk.ts';

const SEED = 1;
const MEMBERS = 500;
const TARGET = 6.5;
const YEAR = 365.25;
/** What is known of a soil's pH before any test: nearly nothing (judgement). */
export const BEFORE = { mean: 6.2, sd: 1.2 } as const;

type Reading = Series['readings'][number];

/**
 * What the whole record of a place teaches: how much its soil resists, how fast materials work here, how fast it drifts,
 * and its pH today, each with how sure we are.
 *
 * Computed afresh from the record every time: entries that come late, are edited or deleted change the answer as if they
 * had always been so, and the order of entries does not matter. The forecast's own model is run over the past with
 * parameters drawn from their spreads; runs that fit the readings count more (`sampler.ts`). The readings' errors are
 * Student's with 4 degrees of freedom, and the bed wanders by 0.10 pH a root year beyond the model.
 *
 * A reading less than three months after ground limestone or by another method tells the pH but teaches nothing else;
 * one retest changes the resistance by a factor 2 at most; a reading that does not fit is pointed out.
 *
 * @param record tests, applications, layer, prior curve (without an own response), water and feeds
 * @param options today and, for the same answer everywhere, a seed
 * @throws RangeError for input that `checkRecord` finds fault with; call that first for sentences to show
 * Source: dynamics sections 6, 7 and 9 (MODEL); `docs/learning.md`.
 */
export function learn(record: BedRecord, options: LearnOptions, recorder?: Recorder): Learned {
  const problems = checkRecord(record, options);
  if (problems.length > 0) throw new RangeError(problems.map((p) => `${p.field}: ${p.message}`).join(' '));
  const seed = options.seed ?? SEED;
  const canonical = inOrder(record);
  const container = record.container ?? false;
  const series = seriesOf(canonical.tests, canonical.applications, container, options.today);
  const teaching = teachers(series.readings);
  const about = { record: canonical, options, series, teaching, seed };
  const result = teaching.length === 0 ? nothing(about) : something(about);
  const learned: Learned = { ...result, messages: messagesOf(result, series.notes) };
  if (recorder) recordLearning(recorder, canonical, learned);
  return learned;
}

interface About {
  readonly record: BedRecord;
  readonly options: LearnOptions;
  readonly series: Series;
  readonly teaching: readonly Reading[];
  readonly seed: number;
}

/** The record in an order that depends on its content only. */
function inOrder(record: BedRecord): BedRecord {
  const key = (application: BedRecord['applications'][number]) => JSON.stringify(application);
  const applications = [...record.applications].sort((a, b) =>
    a.date !== b.date ? (a.date < b.date ? -1 : 1) : key(a) < key(b) ? -1 : 1,
  );
  return { ...record, applications };
}

/** Readings to learn from. Without any, the first reading still sets the level: one alone cannot teach more. */
function teachers(readings: readonly Reading[]): readonly Reading[] {
  const teaching = readings.filter(({ role }) => role === 'learned from');
  return teaching.length > 0 ? teaching : readings.slice(0, 1);
}

type Result = Omit<Learned, 'messages'>;

const spreadOf = (model: BedModel, name: ParameterName): LogEstimate => ({
  median: model.latents.all[name].centre,
  sdLog: model.latents.all[name].sd,
});

function resting(prior: LogEstimate): Resistance {
  const same = unlearned(prior);
  return {
    ...same,
    factor: 1,
    factorLow: same.low / prior.median,
    factorHigh: same.high / prior.median,
    chanceMore: 0.5,
    capped: false,
    freeMedian: prior.median,
    freeSdLog: prior.sdLog,
    taught: false,
  };
}

function nothing({ record, series, seed }: About): Result {
  const { curve } = record;
  return {
    resistance: resting({ median: curve.beta0, sdLog: curve.sdLog }),
    drift: unlearned({ median: P.a0.centre, sdLog: P.a0.sd }),
    curve,
    tests: [],
    leftOut: series.leftOut,
    judged: 0,
    sampled: { members: 0, effective: 0, seed },
  };
}

/** Readings as the sampler wants them, in years after the start. */
function readingsOf(
  list: readonly Reading[],
  first: number,
): { readonly readings: Readings; readonly observed: Float64Array } {
  return {
    readings: {
      years: Float64Array.from(list, ({ date }) => (dayNumber(date) - first) / YEAR),
      sd: Float64Array.from(list, ({ variance }) => Math.sqrt(variance)),
      law: 'student',
      walk: YEAR_SD * YEAR_SD,
    },
    observed: Float64Array.from(list, ({ mean }) => mean),
  };
}

function something({ record, options, series, teaching, seed }: About): Result {
  const all = series.readings;
  const others = all.filter((reading) => !teaching.includes(reading));
  const start = (all[0] as Reading).date;
  const first = dayNumber(start);
  const before = options.before ?? BEFORE;
  const days = [...teaching, ...others].map(({ date }) => date);
  const model = bedModel(record, start, [...days, options.today], before);
  const random = createRandom(seed);
  const { readings, observed } = readingsOf(teaching, first);
  const names = model.latents.list.map(({ name }) => name);
  const sampled = infer(model, days.length + 1, readings, observed, before, random);
  const judged = judgedBy(record, teaching);
  const beta0 = spreadOf(model, 'beta0');
  const resistance =
    judged === 0 ? resting(beta0) : resistanceOf(sampled, names.indexOf('beta0'), beta0, teaching.length);
  const everything = readingsOf(all, first);
  const { present, draws } = presentOf({
    sampled,
    ...everything,
    columns: all.map((reading) => {
      const at = teaching.indexOf(reading);
      return at >= 0 ? at : teaching.length + others.indexOf(reading);
    }),
    today: days.length,
    since: (dayNumber(options.today) - dayNumber((all.at(-1) as Reading).date)) / YEAR,
    date: options.today,
    random,
  });
  const reading =
    judged === 0
      ? undefined
      : ownResponse(resistance, record.curve, record.layer, present.mean, options.targetPh ?? TARGET);
  const rate = rateOf(model, sampled);
  const odd = oddReadings(sampled, readings, observed);
  const tests = all.map((one) => testOf(one, teaching, odd));
  const trends = trendsOf(record, tests);
  return {
    resistance,
    ...(rate === undefined ? {} : { rate }),
    drift: learningOf(sampled, names.indexOf('a0'), spreadOf(model, 'a0')),
    present,
    curve: curveOf(record.curve, resistance, judged),
    ...(reading === undefined ? {} : { reading }),
    parameters: forecastMembers(
      sampled,
      model.latents,
      draws,
      heldBack(resistance),
      options.members ?? MEMBERS,
      random,
    ),
    tests,
    leftOut: series.leftOut,
    ...trends,
    judged,
    sampled: { members: sampled.count, effective: sampled.effective, seed },
  };
}

/** What the cap of a factor 2 a retest takes off the sample's capacity. */
const heldBack = ({ capped, freeMedian, median }: Resistance): number => (capped ? median / freeMedian : 1);

/** The prior curve with the capacity the record taught. */
function curveOf(curve: BufferCurve, resistance: Resistance, judged: number): BufferCurve {
  if (judged === 0) return curve;
  return { ...curve, beta0: curve.beta0 * resistance.factor, sdLog: Math.min(curve.sdLog, resistance.sdLog) };
}

function rateOf(model: BedModel, sampled: Sample): Learned['rate'] {
  for (const [name, of] of [
    ['kLime', 'lime'],
    ['kSulfur', 'sulfur'],
  ] as const) {
    const column = model.latents.list.findIndex((latent) => latent.name === name);
    if (column < 0) continue;
    const learned = learningOf(sampled, column, spreadOf(model, name));
    return { ...learned, of, factor: learned.median / learned.prior.median };
  }
  return undefined;
}

/** Applications with a reading before and one after that may teach. */
function judgedBy(record: BedRecord, teaching: readonly Reading[]): number {
  const [first, last] = [teaching[0]?.date ?? '', teaching.at(-1)?.date ?? ''];
  return record.applications.filter(({ date, currency }) => currency !== 0 && date >= first && date < last).length;
}

function testOf(one: Reading, teaching: readonly Reading[], odd: readonly Odd[]): LearnedTest {
  const at = teaching.indexOf(one);
  // Of two readings that do not fit, nobody can tell which is wrong: the newer is the one to repeat.
  const found = odd.find(({ reading }) => reading === at && (teaching.length > 2 || at === teaching.length - 1));
  return {
    date: one.date,
    ids: one.members.map(({ test }) => test.id).sort(),
    ph: one.mean,
    sd: Math.sqrt(one.variance),
    role: one.role,
    outlier: found !== undefined,
    ...(found === undefined ? {} : { expected: found.expected }),
  };
}

/** Change between the last two readings, and the slope since the last material has settled. */
function trendsOf(record: BedRecord, tests: readonly LearnedTest[]): Pick<Learned, 'trend' | 'change'> {
  const dated = tests.filter(({ role }) => role === 'learned from').map(withDoubt);
  const [before, after] = [dated.at(-2), dated.at(-1)];
  const container = record.container ?? false;
  const settled = record.applications.reduce(
    (latest, one) => Math.max(latest, dayNumber(one.date) + waitFor(one, container)),
    Number.NEGATIVE_INFINITY,
  );
  const trend = trendOf(dated.filter(({ date }) => dayNumber(date) >= settled));
  return {
    ...(trend === undefined ? {} : { trend }),
    ...(before === undefined || after === undefined || before.date === after.date
      ? {}
      : { change: changeOf(before, after) }),
  };
}
