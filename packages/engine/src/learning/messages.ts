import type { Measured, Message } from '../derivation/message.ts';
import type { Ph } from '../units/si.ts';
import type { Learned, LearnedTest, Learning } from './types.ts';

const ph = (value: Ph): Measured => ({ value, dimension: 'ph' });
const share = (value: number): Measured => ({ value, dimension: 'share' });

/** Below this a soil answers "about as expected". */
const SAME = 0.1;
/** Chance from which we say which way it differs. */
const SURE = 0.8;

/** What the record has taught, in sentences, the most useful first. */
export function messagesOf(learned: Omit<Learned, 'messages'>, notes: readonly Message[]): Message[] {
  const { tests, judged, resistance, trend, change } = learned;
  const said: Message[] = [];
  const teaching = tests.filter(({ role }) => role === 'learned from');
  if (tests.length === 0) said.push({ code: 'learning.no-tests' });
  else if (teaching.length < 2) said.push({ code: 'learning.one-test' });
  else if (judged === 0) said.push({ code: 'learning.nothing-judged' });
  else said.push(...resistanceMessages(learned));
  if (resistance.capped) said.push({ code: 'learning.capped' });
  const odd = tests.filter(({ outlier }) => outlier);
  for (const test of odd) said.push(outlierMessage(test, teaching.length));
  if (learned.rate !== undefined && judged > 0) said.push(...rateMessages(learned.rate));
  if (change !== undefined) said.push(changeMessage(change));
  if (trend !== undefined)
    said.push({
      code: trend.real
        ? trend.slope < 0
          ? 'learning.trend-falling'
          : 'learning.trend-rising'
        : 'learning.trend-unclear',
      parameters: { slope: ph(Math.abs(trend.slope)), error: ph(trend.sd), tests: trend.readings },
    });
  return [...said, ...notes, ...learned.leftOut.map(({ reason }) => reason)];
}

function resistanceMessages({ resistance, change }: Omit<Learned, 'messages'>): Message[] {
  const { factor, chanceMore } = resistance;
  const band = { low: `${resistance.factorLow.toFixed(1)}`, high: `${resistance.factorHigh.toFixed(1)}` };
  if (!resistance.taught)
    return [
      change === undefined
        ? { code: 'learning.taught-little' }
        : { code: 'learning.taught-little-change', parameters: { change: ph(Math.abs(change.change)) } },
    ];
  if (factor >= 1 + SAME && chanceMore >= SURE)
    return [
      { code: 'learning.resists-more', parameters: { more: share(factor - 1), sure: share(chanceMore), ...band } },
    ];
  if (factor <= 1 - SAME && chanceMore <= 1 - SURE)
    return [
      { code: 'learning.resists-less', parameters: { less: share(1 - factor), sure: share(1 - chanceMore), ...band } },
    ];
  return [{ code: 'learning.as-expected', parameters: band }];
}

function outlierMessage(test: LearnedTest, readings: number): Message {
  return {
    code: readings > 2 ? 'learning.outlier' : 'learning.unexpected',
    parameters: { date: test.date, seen: ph(test.ph), expected: ph(test.expected?.mean ?? test.ph) },
  };
}

function rateMessages(rate: Learning & { readonly of: 'lime' | 'sulfur'; readonly factor: number }): Message[] {
  // Said only when the middle 80 % lies on one side of what was expected.
  const parameters = { factor: (rate.factor >= 1 ? rate.factor : 1 / rate.factor).toFixed(1) };
  if (rate.low > rate.prior.median) return [{ code: `learning.${rate.of}-fast`, parameters }];
  if (rate.high < rate.prior.median) return [{ code: `learning.${rate.of}-slow`, parameters }];
  return [];
}

function changeMessage({ from, to, change, needed, real }: NonNullable<Learned['change']>): Message {
  return {
    code: real ? (change > 0 ? 'learning.rose' : 'learning.fell') : 'learning.no-change',
    parameters: { from, to, change: ph(Math.abs(change)), needed: ph(needed) },
  };
}
