import { en, type MessageCode } from '@sorrel/almanac/words';
import type { Message, Parameter } from '@sorrel/engine/derivation';
import {
  type Dimension,
  type IsoDate,
  print,
  printRange,
  printShare,
  say,
  type UnitSystem,
  weight,
} from '@sorrel/engine/units';
import type { PrintOptions } from './options.ts';

/** Says sentences, figures and days in one reader's language and units. */
export interface Speaker {
  readonly system: UnitSystem;
  say(message: Message): string;
  /** Words of the layout, by their code. */
  word(code: MessageCode, parameters?: Readonly<Record<string, Parameter>>): string;
  /** A day both sides of the ocean read alike: `12 Oct 2026`. */
  day(date: IsoDate): string;
  days(from: IsoDate, to: IsoDate): string;
  amount(value: number, dimension: Dimension): string;
  /** To two figures, for what nobody measures closer, such as a depth. */
  rough(value: number, dimension: Dimension): string;
  range(low: number, high: number, dimension: Dimension): string;
  share(share: number): string;
  /** A weight as it is read off a scale, never more than the mass. */
  weight(mass: number): string;
  money(value: number): string;
  /** A list said as one: `tomato, carrot and onion`. */
  list(items: readonly string[]): string;
}

export function speakerFor(options: PrintOptions): Speaker {
  const { system, catalogue = en, currencySymbol = '' } = options;
  const told = (message: Message): string => say(message, system, catalogue);
  const word: Speaker['word'] = (code, parameters = {}) => told({ code, parameters });
  const day = (date: IsoDate): string => {
    const [year = '', month = '', dayOfMonth = ''] = date.split('-');
    // Each month has its own words; the cast is held by the test that prints all twelve.
    const name = word(`print.month-${Number(month)}` as MessageCode);
    return word('print.date', { day: String(Number(dayOfMonth)), month: name, year });
  };
  return {
    system,
    say: told,
    word,
    day,
    days: (from, to) => (from === to ? day(from) : word('print.days', { from: day(from), to: day(to) })),
    amount: (value, dimension) => print(value, dimension, system),
    rough: (value, dimension) => print(value, dimension, system, { digits: 2 }),
    range: (low, high, dimension) => printRange(low, high, dimension, system),
    share: printShare,
    weight: (mass) => weight(mass, system, 'down'),
    money: (value) => print(value, 'money', system, { currency: currencySymbol }),
    list: (items) =>
      items.length < 2
        ? (items[0] ?? '')
        : word('print.list-and', { first: items.slice(0, -1).join(', '), last: items[items.length - 1] ?? '' }),
  };
}

/** The sentences of a list, each once: what two rooms say alike is read only once. */
export const once = (speaker: Speaker, messages: readonly Message[], said = new Set<string>()): string[] =>
  messages.map(speaker.say).filter((text) => !said.has(text) && said.add(text));
