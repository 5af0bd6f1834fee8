import type { Learned } from '@sorrel/engine/learning';
import type { Place } from '@sorrel/engine/plan';
import { hanging, paragraph } from './layout.ts';
import { day, phText, type Speaker } from './speak.ts';
import { tableText } from './table-text.ts';
import { timeWords } from './time-words.ts';

/** What one place has taught, in sentences and figures, with the tests it rests on. */
export function learnedText(_place: Place, learned: Learned, speaker: Speaker): string {
  const parts = [...new Set(learned.messages.map(speaker.say))].map((each) => hanging('- ', each, 2)).join('\n');
  return [parts, figures(learned, speaker), tests(learned, speaker)].filter((part) => part !== '').join('\n\n');
}

function figures({ resistance, rate, drift, judged }: Learned, speaker: Speaker): string {
  const times = (value: number): string => `${value.toFixed(2)} times`;
  const said = [
    judged === 0
      ? timeWords.usualResists
      : timeWords.resists(times(resistance.factor), resistance.factorLow.toFixed(2), resistance.factorHigh.toFixed(2)),
  ];
  if (judged > 0) said.push(timeWords.judged(judged));
  if (rate !== undefined && judged > 0) said.push(timeWords.works(rate.of, times(rate.factor)));
  const range = speaker.range(drift.low, drift.high, 'massPerArea');
  said.push(timeWords.drifts(speaker.rough(drift.median, 'massPerArea'), range));
  return said.map((each) => paragraph(each, 2)).join('\n');
}

function tests(learned: Learned, speaker: Speaker): string {
  if (learned.tests.length === 0) return '';
  const [date, ph, sd, role] = timeWords.learnedColumns;
  return tableText(
    [{ title: date }, { title: ph, align: 'right' }, { title: sd, align: 'right' }, { title: role, flexible: true }],
    learned.tests.map((test) => [
      day(test.date),
      phText(test.ph),
      test.sd.toFixed(2),
      test.outlier && test.expected !== undefined
        ? timeWords.outlier(phText(test.expected.mean))
        : test.role === 'pH only'
          ? timeWords.phOnly
          : timeWords.learnedFrom,
    ]),
    { indent: 2, rule: speaker.rule },
  );
}
