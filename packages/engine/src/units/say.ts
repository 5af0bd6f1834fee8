import { type Catalogue, en } from '@sorrel/almanac/words';
import type { Measured, Message, Parameter } from '../derivation/message.ts';
import type { UnitSystem } from './dimension.ts';
import { fill } from './fill.ts';
import { type PrintOptions, print } from './print.ts';
import { plainNumber, significant } from './round.ts';

/** A chance or a share as people say it: `5%`, never a false 0% or 100%. */
export function printShare(share: number): string {
  if (share > 0 && share < 0.01) return share < 0.005 ? 'less than 1%' : '1%';
  if (share < 1 && share > 0.99) return share > 0.995 ? 'more than 99%' : '99%';
  return `${plainNumber(Math.round(share * 100))}%`;
}

/** A pH, or a change of one, to one decimal; to two where one would show nothing. */
export function printPh(ph: number): string {
  // A middle such as 6.35 is stored a hair below itself; it is still rounded up.
  if (ph !== 0 && Math.abs(ph) < 0.1) return (Math.round(ph * 100 + 1e-6) / 100).toFixed(2);
  const tenths = Math.round(ph * 10 + 1e-6);
  // Put together from whole numbers, which costs a quarter of `toFixed`: every row of a table says two of them.
  return tenths >= 0 ? `${Math.trunc(tenths / 10)}.${tenths % 10}` : (tenths / 10).toFixed(1);
}

const measured = ({ value, dimension }: Measured, system: UnitSystem, options: PrintOptions): string =>
  dimension === 'ph'
    ? printPh(value)
    : dimension === 'share'
      ? printShare(value)
      : print(value, dimension, system, options);

const told = (parameter: Parameter, system: UnitSystem, options: PrintOptions): string =>
  typeof parameter === 'string'
    ? parameter
    : typeof parameter === 'number'
      ? plainNumber(Number.isInteger(parameter) ? parameter : significant(parameter, 3))
      : measured(parameter, system, options);

/**
 * A message in words: its template with the parameters in the reader's own units.
 *
 * @param catalogue the words of a language; English when left out
 * @throws RangeError when the code has no template, the template needs a parameter that the message lacks, or a
 *   measured value is not finite: mistakes in the program
 * @example say({ code: 'units.scoop-unknown', parameters: { mass: '240 g' } }, 'metric')
 */
export function say(
  message: Message,
  system: UnitSystem,
  catalogue: Catalogue = en,
  options: PrintOptions = {},
): string {
  const template: string | undefined = catalogue[message.code];
  if (template === undefined) throw new RangeError(`The catalogue has no words for ${message.code}`);
  return fill(template, (name) => {
    const parameter = message.parameters?.[name];
    return parameter === undefined ? undefined : told(parameter, system, options);
  });
}
