import type { Place, Recommendation } from '@sorrel/engine/plan';
import { methodById } from '@sorrel/engine/requirement';
import { hanging } from './layout.ts';
import type { Speaker } from './speak.ts';
import { tableText } from './table-text.ts';
import { words } from './words.ts';

/** The readings of a soil behind a dose, whether they agree, and what was given but could not be used. */
export function readingsText(place: Place, plan: Recommendation, speaker: Speaker): string {
  const { reconciled } = plan;
  // Where nothing is to be spread, how much it would take is no help.
  if (reconciled === undefined || reconciled.used.length === 0) return '';
  if (plan.applications.length === 0 && plan.decision !== 'find out first') return '';
  const perVolume = place.kind === 'container';
  const scale = perVolume ? plan.layer.bulkDensity : plan.layer.mass;
  const row = (reading: (typeof reconciled.used)[number], state: string): string[] => {
    const known = methodById(reading.method);
    const mark = known?.basis === 'memory' ? words.memoryMark : '';
    return [
      (known?.title ?? (reading.kind === 'response' ? words.ownAnswers : reading.kind)) + mark,
      speaker.amount(Math.exp(reading.logBeta0) * scale, perVolume ? 'massPerVolume' : 'massPerArea'),
      `${Number(reading.published.value.toPrecision(3))} ${reading.published.unit}`,
      state,
    ];
  };
  const [reading, resists, published, state] = words.readingColumns;
  const table = tableText(
    [
      { title: reading, flexible: true },
      { title: resists, align: 'right' },
      { title: published, flexible: true },
      { title: state },
    ],
    [
      ...reconciled.used.map((each) => row(each, words.speaks)),
      ...reconciled.beside.map((each) => row(each, words.besideIt)),
    ],
    { indent: 4, rule: speaker.rule },
  );
  const alone = reconciled.used.length === 1;
  const agreement = alone ? words.oneReading : reconciled.disagree ? words.disagree : words.agree;
  return [`  ${words.readings}`, table, hanging('', agreement, 4), ...outside(reconciled.outside, speaker)].join('\n');
}

type Outside = NonNullable<Recommendation['reconciled']>['outside'];

/** Why readings could not be used; one sentence stands for many of its kind. */
function outside(list: Outside, speaker: Speaker): string[] {
  const kinds = new Map<string, { readonly text: string; count: number }>();
  for (const { reason } of list) {
    const kind = kinds.get(reason.code);
    if (kind === undefined) kinds.set(reason.code, { text: speaker.say(reason), count: 1 });
    else kind.count += 1;
  }
  return [...kinds.values()].map(({ text, count }) =>
    hanging(`${words.outside}: `, count === 1 ? text : `${text} ${words.likeIt(count - 1)}`, 4),
  );
}
