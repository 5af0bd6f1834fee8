import { type Alternative, isBeyond, isOpen, type Recommendation } from '@sorrel/engine/plan';
import { hanging } from './layout.ts';
import { chanceText, type Speaker } from './speak.ts';
import { tableText } from './table-text.ts';
import { timeWords } from './time-words.ts';

/** The ways open to a place, side by side, with what closes the others. */
export function compareText(
  ways: readonly Alternative[],
  plan: Recommendation,
  money: string,
  speaker: Speaker,
): string {
  const beyond = isBeyond(plan);
  const [way, cost, after, year, far, jobs] = timeWords.compareColumns;
  const table = tableText(
    [
      { title: way, flexible: true },
      { title: cost, align: 'right' },
      { title: after, align: 'right' },
      { title: year, align: 'right' },
      { title: far, align: 'right' },
      { title: jobs, align: 'right' },
    ],
    ways.map((each) => row(each, money, beyond)),
    { indent: 2, rule: speaker.rule },
  );
  const notes = ways.flatMap((each) => noteOf(each, speaker));
  return notes.length === 0 ? table : `${table}\n\n${notes.join('\n')}`;
}

function row(way: Alternative, money: string, beyond: boolean): string[] {
  const name = timeWords.kinds[way.kind];
  if (!isOpen(way)) return [name, timeWords.closed, '', '', '', ''];
  const known = way.forecast !== undefined || way.kind === 'other plants';
  const after =
    way.months !== undefined
      ? way.months === 0
        ? timeWords.now
        : timeWords.months(way.months)
      : known
        ? timeWords.notWithin
        : timeWords.unknown;
  const share = (value: number | undefined): string => (value === undefined ? timeWords.unknown : chanceText(value));
  return [
    name,
    way.cost === undefined ? timeWords.unknown : `${money}${way.cost.toFixed(2)}`,
    after,
    way.kind === 'other plants' ? chanceText(1) : share(way.insideAfterYear),
    beyond && way.forecast !== undefined ? timeWords.already : share(way.overshoot),
    String(way.jobs),
  ];
}

function noteOf(way: Alternative, speaker: Speaker): string[] {
  const said = way.notes.map(speaker.say);
  const [first] = way.applications;
  if (first !== undefined)
    said.unshift(
      `${way.applications.map(({ product, mass }) => `${speaker.weight(mass)} of ${product.name}`).join(', then ')}.`,
    );
  if (way.plants !== undefined && way.plants.length > 0) said.push(`${way.plants.join(', ')}.`);
  return said.length === 0 ? [] : [hanging(`- ${timeWords.kinds[way.kind]}: `, said.join(' '), 2)];
}
