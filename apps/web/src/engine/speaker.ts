import type { Message } from '@sorrel/engine/derivation';
import { type Dimension, print, printPh, printRange, say, type UnitSystem, weight } from '@sorrel/engine/units';
import { day } from '../words/label.ts';

/** Says figures and the engine's sentences in one person's units. */
export interface Speaker {
  readonly units: UnitSystem;
  say(message: Message): string;
  amount(value: number, dimension: Dimension): string;
  /** To two figures, for what nobody measures closer, such as a depth. */
  rough(value: number, dimension: Dimension): string;
  /** A weight as it is read off a scale, never more than `mass`. */
  weight(mass: number): string;
  range(low: number, high: number, dimension: Dimension): string;
  ph(value: number): string;
  money(value: number): string;
}

/** @param currency sign of the garden's money */
export const speakerFor = (units: UnitSystem, currency = ''): Speaker => ({
  units,
  say: (message) => say(withDates(message), units),
  amount: (value, dimension) => print(value, dimension, units),
  rough: (value, dimension) => print(value, dimension, units, { digits: 2 }),
  weight: (mass) => weight(mass, units, 'down'),
  range: (low, high, dimension) => printRange(low, high, dimension, units),
  ph: printPh,
  money: (value) => print(value, 'money', units, { currency }),
});

const ISO_DAY = /^\d{4}-\d\d-\d\d$/;

/** The engine gives days as ISO 8601; people read them in their own writing. */
function withDates(message: Message): Message {
  const { parameters } = message;
  if (parameters === undefined || !Object.values(parameters).some(isDay)) return message;
  const said = Object.entries(parameters).map(([name, value]) => [name, isDay(value) ? day(value) : value] as const);
  return { code: message.code, parameters: Object.fromEntries(said) };
}

const isDay = (value: unknown): value is string => typeof value === 'string' && ISO_DAY.test(value);
