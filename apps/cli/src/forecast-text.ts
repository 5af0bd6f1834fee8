import type { Foreseen, Recommendation } from '@sorrel/engine/plan';
import { chartText } from './chart-text.ts';
import { hanging, paragraph } from './layout.ts';
import { chanceText, day, phText, type Speaker } from './speak.ts';
import { tableText } from './table-text.ts';
import { timeWords } from './time-words.ts';

/** Weeks between the rows of the table: half a year. */
const HALF_YEAR = 26;

/** The forecast of one place for people: the picture, a table, and what to do about it. */
export function forecastText(seen: Foreseen, plan: Recommendation, withPlan: boolean, speaker: Speaker): string {
  const { forecast } = seen;
  const said = [chances(seen, plan, withPlan), retestText(seen, speaker)].flat();
  const cautions = [...new Set(forecast.cautions.map(speaker.say))];
  return [
    chartText(seen, speaker.unicode),
    table(seen, speaker),
    said.map((line) => paragraph(line, 2)).join('\n'),
    cautions.length === 0 ? '' : [`  ${timeWords.care}`, ...cautions.map((each) => hanging('- ', each, 4))].join('\n'),
  ]
    .filter((part) => part !== '')
    .join('\n\n');
}

function table({ forecast }: Foreseen, speaker: Speaker): string {
  const most = forecast.bands.find(({ share }) => share === 0.8);
  const last = forecast.dates.length - 1;
  const indexes = Array.from({ length: Math.floor(last / HALF_YEAR) + 1 }, (_, i) => i * HALF_YEAR);
  if (last - (indexes.at(-1) ?? 0) > HALF_YEAR / 2) indexes.push(last);
  const [dayTitle, median, band, inside] = timeWords.columns;
  const ranged = forecast.inside.length > 0;
  return tableText(
    [
      { title: dayTitle },
      { title: median, align: 'right' },
      { title: band, align: 'right' },
      ...(ranged ? [{ title: inside, align: 'right' } as const] : []),
    ],
    indexes.map((index) => [
      day(forecast.dates[index] ?? ''),
      phText(forecast.median[index] ?? 0),
      `${phText(most?.low[index] ?? 0)} to ${phText(most?.high[index] ?? 0)}`,
      ...(ranged ? [chanceText(forecast.inside[index] ?? 0)] : []),
    ]),
    { indent: 2, rule: speaker.rule },
  );
}

function chances({ forecast, range, today }: Foreseen, plan: Recommendation, withPlan: boolean): string[] {
  if (range === undefined) return [];
  const { insideFrom, overshoot, dates, insideBy } = forecast;
  const last = dates.at(-1) ?? today;
  const said = [
    insideFrom === undefined
      ? timeWords.insideNever(day(last))
      : insideFrom === today
        ? timeWords.insideNow
        : timeWords.insideFrom(day(insideFrom)),
  ];
  const reached = insideBy.at(-1);
  if (reached !== undefined && insideFrom !== today) said.push(timeWords.insideBy(chanceText(reached), day(last)));
  if (overshoot === undefined) return said;
  const lowering = plan.decision === 'lower';
  const moving = plan.decision === 'raise' || lowering;
  // Where the pH lies beyond an end already, the chance of being there tells nothing.
  const now = forecast.median[0] ?? 0;
  if ((!moving || !lowering) && now <= range.high)
    said.push(timeWords.overshootAbove(phText(range.high), chanceText(overshoot.above)));
  if ((!moving || lowering) && now >= range.low)
    said.push(timeWords.overshootBelow(phText(range.low), chanceText(overshoot.below)));
  const steps = plan.applications.some(({ onlyIfRetest }) => onlyIfRetest);
  if (withPlan && steps && plan.overshootChance !== undefined)
    said.push(timeWords.firstStep(chanceText(plan.overshootChance)));
  return said;
}

const retestText = ({ forecast }: Foreseen, speaker: Speaker): string =>
  timeWords.retest(day(forecast.retest.date), speaker.say(forecast.retest.why));
