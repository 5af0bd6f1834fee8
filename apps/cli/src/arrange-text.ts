import type { Message } from '@sorrel/engine/derivation';
import type { Arrangement, Figures, Growing, PlacedPlace } from '@sorrel/engine/placing';
import { hanging } from './layout.ts';
import { placingWords as own } from './placing-words.ts';
import type { Speaker } from './speak.ts';
import { tableText } from './table-text.ts';

/** An arrangement for people: each place with its seasons and reasons, what must be told, then what it asks. */
export function arrangeText(found: Arrangement, money: string, speaker: Speaker): string {
  const list = (messages: readonly Message[], indent = 2) =>
    [...new Set(messages.map(speaker.sayRoughly))].map((each) => hanging('- ', each, indent));
  const parts = found.places.map((place) => placeText(place, speaker, list));
  for (const { messages } of found.clashes) parts.push([own.clash, ...list(messages)].join('\n'));
  if (found.unmet.length > 0) {
    const lines = found.unmet.flatMap(({ plant, seasons, area, reasons }) => [
      hanging('', own.inSeasons(plant, seasons, speaker.rough(area, 'area')), 2),
      ...list(reasons, 4),
    ]);
    parts.push([own.unmet, ...lines].join('\n'));
  }
  if (found.apart.length > 0) parts.push([own.apart, ...list(found.apart)].join('\n'));
  const said = [...found.messages, ...(found.runnerUp?.messages ?? [])];
  parts.push(
    [
      own.asks,
      '',
      figuresTable(found, money, speaker),
      '',
      ...list(said),
      hanging('', own.inTurn, 2),
      hanging('', own.moved, 2),
    ].join('\n'),
  );
  return parts.join('\n\n');
}

function placeText(place: PlacedPlace, speaker: Speaker, list: (messages: readonly Message[]) => string[]): string {
  const said = place.seasons.map(
    (season) => season.map((each) => growingText(each, speaker)).join('; ') || own.nothing,
  );
  const groups = new Map<string, number[]>();
  said.forEach((text, at) => {
    groups.set(text, [...(groups.get(text) ?? []), at + 1]);
  });
  const lines = [...groups].map(([text, seasons]) =>
    hanging(said.length === 1 ? '' : `${own.seasons(seasons)}: `, text, 2),
  );
  return [place.name, ...lines, ...list(place.reasons)].join('\n');
}

const growingText = ({ plant, area, stays, fixed }: Growing, speaker: Speaker): string =>
  own.growing(plant, speaker.rough(area, 'area'), stays ? own.stays : fixed ? own.fixed : '');

function figuresTable(found: Arrangement, money: string, speaker: Speaker): string {
  const row = (name: string, figures: Figures): string[] => [
    name,
    speaker.rough(figures.currency, 'mass'),
    speaker.rough(figures.material, 'mass'),
    figures.money === undefined ? own.unknownMoney : `${money}${figures.money.toFixed(2)}`,
    String(figures.months),
    String(figures.places),
    speaker.rough(figures.unmet, 'area'),
  ];
  const rows = [row(own.this, found.figures)];
  if (found.runnerUp !== undefined) rows.push(row(own.next, found.runnerUp.figures));
  rows.push(row(own.greedy, found.greedy));
  const columns = own.columns.map((title, at) => ({ title, align: at === 0 ? ('left' as const) : ('right' as const) }));
  return tableText(columns, rows, { indent: 2, rule: speaker.rule });
}
