import { materialOf } from '@sorrel/almanac/materials';
import { methodRows } from '@sorrel/almanac/methods';
import type { Message } from '@sorrel/engine/derivation';
import type { Application, Place, Recommendation } from '@sorrel/engine/plan';
import { scoops, volumeOf } from '@sorrel/engine/units';
import { hanging, pageWidth } from './layout.ts';
import { chanceText, day, phText, type Speaker } from './speak.ts';
import { tableText } from './table-text.ts';
import { words } from './words.ts';

/** Everything a gardener is told about one place. */
export function placeText(place: Place, plan: Recommendation, speaker: Speaker): string {
  const said = new Set<string>();
  const once = (messages: readonly Message[]): string[] =>
    messages.map(speaker.say).filter((text) => !said.has(text) && said.add(text));
  const parts = [
    heading(place, speaker),
    hanging('', `${words.decisions[plan.decision].toUpperCase()}. ${once(plan.reasons).join(' ')}`, 2),
    facts(place, plan, speaker),
    todo(plan, speaker),
    list(words.care, once(plan.cautions)),
    list(words.findOut, once(plan.ask)),
    plan.instead.length === 0 ? '' : hanging(`${words.instead}: `, plan.instead.join(', '), 2),
    readings(place, plan, speaker),
    memory(plan),
  ];
  return `${parts.filter((part) => part !== '').join('\n\n')}\n`;
}

function heading(place: Place, speaker: Speaker): string {
  const extent =
    place.kind === 'container'
      ? `${speaker.amount(place.volume ?? 0, 'volume')} of mix`
      : `${speaker.amount(place.area, 'area')}, ${speaker.amount(place.depth, 'length')} deep`;
  const title = `${place.name} (${place.situation === 'lawn' ? 'lawn' : place.kind}, ${extent})`;
  return `${title}\n${speaker.rule.repeat(Math.min(pageWidth(), title.length))}`;
}

function facts(place: Place, plan: Recommendation, speaker: Speaker): string {
  const { present, target, requirement } = plan;
  const whom =
    target.basis === 'plants'
      ? words.forPlants(
          place.plants.map((plant) => plant.name + (plant.basis === 'memory' ? words.memoryMark : '')).join(', '),
        )
      : target.basis === 'own figures'
        ? words.ownFigures
        : words.generalRange;
  const rows: [string, string][] = [
    [
      words.phNow,
      present === undefined
        ? words.noReading
        : words.giveOrTake(phText(present.mean), phText(Math.max(0.1, present.sd)), day(present.date)),
    ],
  ];
  if (target.conflicts.length === 0)
    rows.push([words.wanted, words.wantedText(phText(target.low), phText(target.high), phText(target.aim), whom)]);
  if (requirement !== undefined && plan.applications.length > 0) {
    const dimension = place.kind === 'container' ? 'massPerVolume' : 'massPerArea';
    const size = (value: number) => speaker.amount(Math.abs(value), dimension);
    const say = requirement.best < 0 ? words.needLowerText : words.needText;
    const [near, far] = [requirement.low, requirement.high].sort((a, b) => Math.abs(a) - Math.abs(b));
    rows.push([words.need, say(size(requirement.best), size(near ?? 0), size(far ?? 0))]);
  }
  const width = Math.max(...rows.map(([label]) => label.length));
  return rows.map(([label, text]) => hanging(`${label.padEnd(width)}  `, text, 2)).join('\n');
}

function todo(plan: Recommendation, speaker: Speaker): string {
  if (plan.applications.length === 0 && plan.retest === undefined) return '';
  const lines: string[] = [];
  const how = new Set<string>();
  for (const application of plan.applications) lines.push(stepText(application, how, speaker));
  if (plan.overshootChance !== undefined && plan.applications.length > 0)
    lines.push(hanging('', words.overshoot(chanceText(plan.overshootChance)), 4));
  const { retest } = plan;
  if (retest !== undefined) {
    const text = `${words.retestText(day(retest.earliest), day(retest.latest))} ${speaker.say(retest.why)}`;
    lines.push(hanging(`${words.retest}: `, text, 4));
  }
  return [`  ${words.doThis}`, ...lines].join('\n');
}

function stepText(step: Application, how: Set<string>, speaker: Speaker): string {
  const { product } = step;
  const scoop =
    product.density === undefined ? undefined : scoops(volumeOf(step.mass, product.density), speaker.system);
  const label = step.onlyIfRetest ? words.later(step.number) : words.step(step.number);
  const rate =
    step.perArea !== undefined
      ? speaker.amount(step.perArea, 'massPerArea')
      : speaker.amount(step.perVolume ?? 0, 'massPerVolume');
  const mark = materialOf(product.material)?.basis === 'memory' ? words.memoryMark : '';
  const text =
    words.of(speaker.weight(step.mass), product.name + mark) +
    (scoop === undefined ? '.' : `${words.scoops(scoop)}.`) +
    ` ${words.per(rate)} ${words.between(day(step.earliest), day(step.latest))}`;
  const fresh = step.how.map(speaker.say).filter((each) => !how.has(each) && how.add(each));
  return [hanging(label, text, 4), ...fresh.map((each) => hanging('- ', each, 6))].join('\n');
}

const list = (title: string, items: readonly string[]): string =>
  items.length === 0 ? '' : [`  ${title}`, ...items.map((each) => hanging('- ', each, 4))].join('\n');

function readings(place: Place, plan: Recommendation, speaker: Speaker): string {
  const { reconciled } = plan;
  if (reconciled === undefined || reconciled.used.length === 0) return '';
  const pots = place.kind === 'container';
  const row = (reading: (typeof reconciled.used)[number], state: string): string[] => {
    const known = methodRows.find((method) => method.id === reading.method);
    const mark = known?.basis === 'memory' ? words.memoryMark : '';
    return [
      (known?.title ?? reading.kind) + mark,
      speaker.amount(Math.exp(reading.logBeta0) * (pots ? 1 : plan.layer.mass), pots ? 'massFraction' : 'massPerArea'),
      `${Number(reading.published.value.toPrecision(3))} ${reading.published.unit}`,
      state,
    ];
  };
  const [reading, resists, published, state] = words.readingColumns;
  const table = tableText(
    [
      { title: reading, flexible: true },
      { title: resists, align: 'right' },
      { title: published, align: 'right' },
      { title: state },
    ],
    [
      ...reconciled.used.map((each) => row(each, words.speaks)),
      ...reconciled.beside.map((each) => row(each, words.besideIt)),
    ],
    { indent: 4, rule: speaker.rule },
  );
  const agreement =
    reconciled.used.length === 1 ? words.oneReading : reconciled.disagree ? words.disagree : words.agree;
  const outside = reconciled.outside.map((each) => hanging(`${words.outside}: `, speaker.say(each.reason), 4));
  return [`  ${words.readings}`, table, hanging('', agreement, 4), ...new Set(outside)].join('\n');
}

/** Titles of the figures that rest on memory, so that nobody takes them for checked. */
function memory(plan: Recommendation): string {
  const titles = new Set(
    (plan.derivation?.steps ?? []).filter((step) => step.basis === 'memory').map((step) => step.title.toLowerCase()),
  );
  return titles.size === 0 ? '' : hanging('', words.memoryFigures([...titles].join('; ')), 2);
}
