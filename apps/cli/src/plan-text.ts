import type { Garden, GardenPlan, Recommendation } from '@sorrel/engine/plan';
import { derivationText } from './derivation-text.ts';
import { hanging } from './layout.ts';
import { type PhRow, phLine } from './ph-line.ts';
import { placeText } from './place-text.ts';
import { shoppingText } from './shopping-text.ts';
import { day, type Speaker } from './speak.ts';
import { words } from './words.ts';

export interface PlanTextOptions {
  /** Show the working: all of it, or of one figure. */
  readonly why: boolean;
  readonly figure?: string | undefined;
  /** The publications behind the working, already written out. */
  readonly sources?: string | undefined;
}

/** A whole plan for people: the pH line, each place, what to buy, and the working when it is asked for. */
export function planText(garden: Garden, plan: GardenPlan, speaker: Speaker, options: PlanTextOptions): string {
  const parts: string[] = [`${garden.name}\n${words.asOf(day(garden.settings.today))}\n`];
  const pairs = garden.places.map((place, index) => ({ place, advice: plan.recommendations[index] as Recommendation }));
  parts.push(
    `${phLine(
      pairs.map(({ place, advice }) => phRow(place.name, advice)),
      speaker.unicode,
    )}\n`,
  );
  for (const { place, advice } of pairs) {
    parts.push(placeText(place, advice, speaker));
    if (options.why && advice.derivation !== undefined)
      parts.push(`  ${words.why}\n\n${derivationText(advice.derivation, options.figure)}\n`);
  }
  parts.push(shoppingText(plan.shopping, garden.currencySymbol, speaker));
  if (options.sources !== undefined) parts.push(options.sources);
  const body = parts.join('\n');
  const notes = [
    body.includes(`${words.memoryMark} `) || body.includes(`${words.memoryMark},`) ? words.memoryNote : '',
    words.localRules,
  ];
  return `${body}\n${notes
    .filter((note) => note !== '')
    .map((note) => hanging('', note, 0))
    .join('\n')}\n`;
}

function phRow(name: string, advice: Recommendation): PhRow {
  const { target } = advice;
  const moves = advice.applications.length > 0;
  return {
    name,
    low: Math.min(target.low, target.high),
    high: Math.max(target.low, target.high),
    verdict: words.verdicts[advice.decision],
    ...(advice.present === undefined ? {} : { present: advice.present }),
    ...(moves ? { aim: target.aim } : {}),
  };
}
