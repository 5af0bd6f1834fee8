import type { Message } from '@sorrel/engine/derivation';
import type { Place, Recommendation } from '@sorrel/engine/plan';
import { hanging, pageWidth, paragraph } from './layout.ts';
import { readingsText } from './readings-text.ts';
import { day, phText, type Speaker } from './speak.ts';
import { stepsText } from './steps-text.ts';
import { words } from './words.ts';

/** Everything a gardener is told about one place. */
export function placeText(place: Place, plan: Recommendation, speaker: Speaker): string {
  const said = new Set<string>();
  const once = (messages: readonly Message[]): string[] =>
    messages.map(speaker.say).filter((text) => !said.has(text) && said.add(text));
  const parts = [
    heading(place, speaker),
    `  ${words.decisions[plan.decision]}\n${paragraph(once(plan.reasons).join(' '), 2, 0)}`,
    facts(place, plan, speaker, once(plan.notes)),
    list(words.taught, once(plan.learned?.messages ?? [])),
    stepsText(plan, speaker),
    list(words.care, once(plan.cautions)),
    list(words.findOut, once(plan.ask)),
    plan.instead.length === 0 ? '' : paragraph(`${words.instead}: ${plan.instead.join(', ')}.`, 2),
    readingsText(place, plan, speaker),
    memory(plan),
  ];
  return `${parts.filter((part) => part !== '').join('\n\n')}\n`;
}

function heading(place: Place, speaker: Speaker): string {
  const extent =
    place.kind === 'container'
      ? words.ofMix(speaker.amount(place.volume ?? 0, 'volume'))
      : words.deep(speaker.amount(place.area, 'area'), speaker.rough(place.depth, 'length'));
  const title = `${place.name} (${place.situation === 'lawn' ? 'lawn' : place.kind}, ${extent})`;
  return `${title}\n${speaker.rule.repeat(Math.min(pageWidth(), title.length))}`;
}

function facts(place: Place, plan: Recommendation, speaker: Speaker, notes: readonly string[]): string {
  const { present, target } = plan;
  const rows: [string, string][] = [];
  if (present === undefined) rows.push([words.phNow, words.noReading]);
  else {
    const spread = phText(Math.max(0.1, present.sd));
    rows.push([words.phNow, words.giveOrTake(phText(present.mean), spread, day(present.date))]);
    for (const note of notes) rows.push(['', note]);
  }
  if (target.conflicts.length === 0) {
    const [low, high, aim] = [phText(target.low), phText(target.high), phText(target.aim)];
    rows.push([words.wanted, words.wantedText(low, high, aim, whom(place, plan))]);
  }
  const need = needText(place, plan, speaker);
  if (need !== undefined) rows.push([words.need, need]);
  const width = Math.max(...rows.map(([label]) => label.length));
  return rows.map(([label, text]) => hanging(`${label.padEnd(width)}  `, text, 2)).join('\n');
}

function whom(place: Place, plan: Recommendation): string {
  if (plan.target.basis === 'own figures') return words.ownFigures;
  if (plan.target.basis === 'default') return words.generalRange;
  const names = place.plants.map((plant) => plant.name + (plant.basis === 'memory' ? words.memoryMark : ''));
  return words.forPlants(names.join('; '));
}

function needText(place: Place, plan: Recommendation, speaker: Speaker): string | undefined {
  const { requirement } = plan;
  if (requirement === undefined || plan.applications.length === 0) return undefined;
  const dimension = place.kind === 'container' ? 'massPerVolume' : 'massPerArea';
  const [near, far] = [Math.abs(requirement.low), Math.abs(requirement.high)].sort((a, b) => a - b);
  const say = requirement.best < 0 ? words.needLowerText : words.needText;
  return say(speaker.rough(Math.abs(requirement.best), dimension), speaker.range(near ?? 0, far ?? 0, dimension));
}

const list = (title: string, items: readonly string[]): string =>
  items.length === 0 ? '' : [`  ${title}`, ...items.map((each) => hanging('- ', each, 4))].join('\n');

/** Titles of the figures that rest on memory, so that nobody takes them for checked. */
function memory(plan: Recommendation): string {
  const steps = plan.derivation?.steps.filter((step) => step.basis === 'memory') ?? [];
  const titles = new Set(steps.map((step) => step.title.charAt(0).toLowerCase() + step.title.slice(1)));
  return titles.size === 0 ? '' : paragraph(words.memoryFigures([...titles].join('; ')), 2, 0);
}
