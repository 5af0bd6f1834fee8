import { en } from '@sorrel/almanac/words';
import type { Message } from '@sorrel/engine/derivation';
import { type Dimension, print, printRange, say, type UnitSystem, weight } from '@sorrel/engine/units';

/** Says figures and sentences in one person's units and letters. */
export interface Speaker {
  readonly system: UnitSystem;
  readonly unicode: boolean;
  /** Sign a table's rule is drawn with. */
  readonly rule: string;
  say(message: Message): string;
  amount(value: number, dimension: Dimension): string;
  /** To two figures, for what nobody measures closer, such as a depth. */
  rough(value: number, dimension: Dimension): string;
  sayRoughly(message: Message): string;
  /** A weight as it is read off a scale, never more than `mass`. */
  weight(mass: number): string;
  range(low: number, high: number, dimension: Dimension): string;
}

export function speakerFor(system: UnitSystem, unicode: boolean): Speaker {
  return {
    system,
    unicode,
    rule: unicode ? '─' : '-',
    say: (message) => say(message, system),
    amount: (value, dimension) => print(value, dimension, system),
    rough: (value, dimension) => print(value, dimension, system, { digits: 2 }),
    sayRoughly: (message) => say(message, system, en, { digits: 2 }),
    weight: (mass) => weight(mass, system, 'down'),
    range: (low, high, dimension) => printRange(low, high, dimension, system),
  };
}

const ASCII: readonly (readonly [RegExp, string])[] = [
  [/[‘’′]/g, "'"],
  [/[“”″]/g, '"'],
  [/[–—−]/g, '-'],
  [/²/g, '2'],
  [/³/g, '3'],
  [/°/g, ' deg '],
  [/×|·/g, '*'],
  [/µ/g, 'u'],
  [/…/g, '...'],
];

/** The nearest plain letters, for terminals that show nothing else. Names keep their letters. */
export const toAscii = (text: string): string => ASCII.reduce((said, [sign, plain]) => said.replace(sign, plain), text);

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** A day as both sides of the ocean read it: `12 Oct 2026`. */
export function day(date: string): string {
  const [year, month, dayOfMonth] = date.split('-');
  return `${Number(dayOfMonth)} ${months[Number(month) - 1] ?? month} ${year}`;
}

export const phText = (value: number): string => value.toFixed(1);

/** A chance in words that do not pretend: `under 1 %`, `4 %`. */
export const chanceText = (chance: number): string => (chance < 0.01 ? 'under 1 %' : `${Math.round(chance * 100)} %`);
