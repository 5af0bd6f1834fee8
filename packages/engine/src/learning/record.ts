import type { Recorder, Term } from '../derivation/derivation.ts';
import { posteriorSd } from './reading.ts';
import { MOST_PER_RETEST } from './resistance.ts';
import { changeOf, trendOf, withDoubt } from './trend.ts';
import type { BedRecord, Learned } from './types.ts';

/** Tells the recorder how what was learned came about: prior, readings, posterior, cap, reading. */
export function recordLearning(recorder: Recorder, record: BedRecord, learned: Learned): void {
  const { resistance, tests, sampled, reading, present, change, rate, drift } = learned;
  const { curve, layer } = record;
  recorder.step({
    symbol: 'ln beta0_prior',
    title: 'What texture and tests suggest of the resistance, before the bed has answered',
    formula: 'ln beta0_prior = ln(beta0), sd = sqrt(sd_beta^2 + sd_eta^2)',
    terms: [
      { symbol: 'beta0', value: curve.beta0, unit: 'kg CaCO3/kg/pH', origin: 'entered' },
      { symbol: 'sd_beta', value: curve.sdLog, unit: 'ln', origin: 'entered' },
      {
        symbol: 'sd_eta',
        value: Math.sqrt(Math.max(0, resistance.prior.sdLog ** 2 - curve.sdLog ** 2)),
        unit: 'ln',
        origin: 'table',
        source: 'UGA10',
      },
    ],
    value: Math.log(resistance.prior.median),
    unit: 'ln(kg CaCO3/kg/pH)',
    sources: ['MODEL', 'UGA10'],
    basis: 'derived',
    note: `standard deviation ${resistance.prior.sdLog.toFixed(3)}; capacity and share that acts cannot be told apart`,
  });
  for (const test of tests)
    recorder.step({
      symbol: `pH (${test.date})`,
      title:
        test.role === 'learned from' ? 'Reading that is learned from' : 'Reading that tells only the pH of its day',
      formula: 'mean of the replicates as pH; s = sqrt(s_core^2/n + s_lab^2)',
      terms: [{ symbol: 's', value: test.sd, unit: 'pH', origin: 'choice' }],
      value: test.ph,
      unit: 'pH',
      sources: ['CON26', 'FV55', 'TEXT'],
      basis: 'memory',
      ...(test.expected === undefined
        ? {}
        : { note: `the others let expect ${test.expected.mean.toFixed(2)}, sd ${test.expected.sd.toFixed(2)}` }),
    });
  if (sampled.members === 0 || present === undefined) return;
  if (change !== undefined) {
    const sdOn = (date: string) => tests.find((test) => test.date === date && test.role === 'learned from');
    const [from, to] = [sdOn(change.from), sdOn(change.to)];
    if (from !== undefined && to !== undefined) changeOf(withDoubt(from), withDoubt(to), recorder);
  }
  const { trend } = learned;
  if (trend !== undefined)
    trendOf(tests.filter(({ role, date }) => role === 'learned from' && date >= trend.from).map(withDoubt), recorder);
  const given = record.applications.map(
    ({ date, currency }): Term => ({ symbol: `B (${date})`, value: currency, unit: 'kg CaCO3/m2', origin: 'entered' }),
  );
  const seen = tests
    .filter(({ role }) => role === 'learned from')
    .map(({ date, ph }): Term => ({ symbol: `pH (${date})`, value: ph, unit: 'pH', origin: 'step' }));
  const posterior = (symbol: string, title: string, median: number, unit: string, note: string, terms: Term[] = []) =>
    recorder.step({
      symbol,
      title,
      formula: 'posterior = prior x product of t4((pH_i - pH_model(t_i) - W(t_i))/s_i), dW ~ N(0, 0.1^2 dt)',
      terms: [...terms, ...seen, ...given, { symbol: 'M', value: layer.mass, unit: 'kg/m2', origin: 'entered' }],
      value: median,
      unit,
      sources: ['MODEL', 'SORREL'],
      basis: 'derived',
      note,
    });
  posterior(
    'beta0',
    'Resistance after the bed has answered, middle of the posterior',
    resistance.median,
    'kg CaCO3/kg/pH',
    `mean of ln ${resistance.meanLog.toFixed(4)}, sd ${resistance.sdLog.toFixed(3)}; ${sampled.members} runs of the ` +
      `forecast worth ${Math.round(sampled.effective)}, seed ${sampled.seed}` +
      (resistance.capped ? `; held to a factor ${MOST_PER_RETEST} a retest` : ''),
    [
      {
        symbol: 'ln beta0_prior',
        value: Math.log(resistance.prior.median),
        unit: 'ln(kg CaCO3/kg/pH)',
        origin: 'step',
      },
    ],
  );
  recorder.step({
    symbol: 'f',
    title: 'How many times as much the soil resists as its texture and tests suggest',
    formula: 'f = beta0/exp(ln beta0_prior)',
    terms: [
      { symbol: 'beta0', value: resistance.median, unit: 'kg CaCO3/kg/pH', origin: 'step' },
      {
        symbol: 'ln beta0_prior',
        value: Math.log(resistance.prior.median),
        unit: 'ln(kg CaCO3/kg/pH)',
        origin: 'step',
      },
    ],
    value: resistance.factor,
    unit: '1',
    sources: ['MODEL'],
    basis: 'derived',
    note: `middle 80 %: ${resistance.factorLow.toFixed(2)} to ${resistance.factorHigh.toFixed(2)}`,
  });
  if (rate !== undefined)
    posterior(
      rate.of === 'lime' ? 'k_d' : 'K_S',
      rate.of === 'lime' ? 'Speed of lime here' : 'Speed of sulfur here',
      rate.median,
      rate.of === 'lime' ? 'm/day' : 'kg/m2/day',
      `prior ${rate.prior.median.toExponential(2)}, sd of ln ${rate.prior.sdLog}; now ${rate.sdLog.toFixed(2)}`,
    );
  posterior(
    'A0',
    'Acid the place makes by itself',
    drift.median,
    'kg CaCO3/m2/yr',
    `prior ${drift.prior.median.toFixed(5)}, sd of ln ${drift.prior.sdLog}; now ${drift.sdLog.toFixed(2)}`,
  );
  posterior('pH', "Today's pH", present.median, 'pH', `mean ${present.mean.toFixed(2)}, sd ${present.sd.toFixed(2)}`);
  if (reading !== undefined)
    recorder.step({
      symbol: `ln beta0 (${reading.method})`,
      title: "The bed's own answer as one reading: the prior taken out again",
      formula: '1/s^2 = 1/s_post^2 - 1/s_prior^2; ln beta0 = s^2 (m_post/s_post^2 - m_prior/s_prior^2)',
      terms: [
        { symbol: 'm_post', value: resistance.meanLog, unit: 'ln', origin: 'choice' },
        { symbol: 's_post', value: posteriorSd(resistance), unit: 'ln', origin: 'choice' },
        { symbol: 'ln beta0_prior', value: Math.log(resistance.prior.median), unit: 'ln', origin: 'step' },
        { symbol: 's_prior', value: resistance.prior.sdLog, unit: 'ln', origin: 'choice' },
      ],
      value: reading.logBeta0,
      unit: 'ln(kg CaCO3/kg/pH)',
      sources: ['MODEL', 'SORREL'],
      basis: 'judgement',
      note: `sd ${reading.sdLog.toFixed(2)}, never below 0.15`,
    });
}
