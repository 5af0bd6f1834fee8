import type { Message } from '../derivation/message.ts';
import type { UnitSystem } from './dimension.ts';
import { plainNumber } from './round.ts';
import type { CubicMetre, KgPerM3, Kilogram } from './si.ts';
import { unitOf } from './unit-text.ts';

const ounce = unitOf('oz').factor;
const pound = unitOf('lb').factor;

/** Steps of what a gardener can weigh with: from a kitchen scale over a luggage scale to parts of a bag. Masses below `under` take `step`. */
const steps: Readonly<Record<UnitSystem, readonly { readonly under: Kilogram; readonly step: Kilogram }[]>> = {
  metric: [
    { under: 0.05, step: 0.001 },
    { under: 0.25, step: 0.005 },
    { under: 2, step: 0.01 },
    { under: 10, step: 0.05 },
    { under: Number.POSITIVE_INFINITY, step: 0.5 },
  ],
  us: [
    { under: ounce, step: ounce / 20 },
    { under: pound, step: ounce / 4 },
    { under: 4 * pound, step: ounce },
    { under: 25 * pound, step: pound / 4 },
    { under: Number.POSITIVE_INFINITY, step: pound },
  ],
};

/**
 * The finest step that a mass can be weighed to at home, kg.
 *
 * Source: common-practice (what kitchen and luggage scales show).
 */
export function weighingStep(mass: Kilogram, system: UnitSystem): Kilogram {
  const found = steps[system].find(({ under }) => mass < under);
  return found?.step ?? 0.5;
}

/** How a mass is rounded: to the nearest step, or down where going over a limit would do harm. */
export type Rounding = 'nearest' | 'down';

const wholeSteps = (value: number, step: number, rounding: Rounding): number => {
  const count = value / step;
  // A mass that is a whole number of steps but for binary noise must not lose one.
  return rounding === 'down' ? Math.floor(count + 1e-9) : Math.round(count);
};

/**
 * A mass rounded to what can be weighed out at home. It never rises by more than half a step, and not at all with
 * `down`; 0 means that it is too little to weigh.
 *
 * @param mass kg, zero or more
 * @throws RangeError when the mass is negative or not finite
 * Source: common-practice.
 */
export function weighable(mass: Kilogram, system: UnitSystem, rounding: Rounding = 'nearest'): Kilogram {
  if (!(mass >= 0) || !Number.isFinite(mass)) throw new RangeError(`${mass} kg cannot be weighed out`);
  const step = weighingStep(mass, system);
  return Number((wholeSteps(mass, step, rounding) * step).toPrecision(12));
}

const eighths = ['', ' 1/8', ' 1/4', ' 3/8', ' 1/2', ' 5/8', ' 3/4', ' 7/8'];

/** A number in whole parts, as a mixed fraction: `3 1/4`, `1/2`, `0`. */
function fraction(value: number, parts: 2 | 4 | 8, rounding: Rounding): string {
  const count = wholeSteps(value, 1 / parts, rounding);
  const whole = Math.floor(count / parts);
  const part = eighths[((count % parts) * 8) / parts] ?? '';
  return whole === 0 && part !== '' ? part.trim() : `${whole}${part}`;
}

/**
 * A mass as it is read off a scale, rounded by `weighable`: `240 g`, `1.25 kg`, `3 lb 4 oz`, `2 1/4 oz`.
 *
 * @throws RangeError when the mass is negative or not finite
 */
export function weight(mass: Kilogram, system: UnitSystem, rounding: Rounding = 'nearest'): string {
  const rounded = weighable(mass, system, rounding);
  if (system === 'metric')
    return rounded < 1
      ? `${plainNumber(Math.round(rounded * 1000))} g`
      : `${plainNumber(Number(rounded.toFixed(3)))} kg`;
  if (rounded < ounce * 0.9999) return `${plainNumber(Number((rounded / ounce).toFixed(2)))} oz`;
  if (rounded < pound * 0.9999) return `${fraction(rounded / ounce, 4, 'nearest')} oz`;
  const ounces = Math.round(rounded / ounce);
  if (rounded >= 4 * pound * 0.9999) return `${fraction(rounded / pound, 4, 'nearest')} lb`;
  return ounces % 16 === 0 ? `${ounces / 16} lb` : `${Math.floor(ounces / 16)} lb ${ounces % 16} oz`;
}

const millilitre = 1e-6;
const teaspoon = unitOf('tsp').factor;
const tablespoon = unitOf('tbsp').factor;
const cup = unitOf('cup').factor;
const gallon = unitOf('gal').factor;

/**
 * A volume in the measures at hand: cups, tablespoons and teaspoons, or millilitres and litres: `3 1/4 cups`. To the
 * nearest it is within a fifth of the volume from a teaspoon up; rounding down it is never above it.
 *
 * @param volume m³, zero or more
 */
export function scoops(volume: CubicMetre, system: UnitSystem, rounding: Rounding = 'nearest'): string {
  if (system === 'metric') {
    const ml = volume / millilitre;
    if (ml < 1000) {
      const step = ml < 20 ? 1 : ml < 100 ? 5 : ml < 300 ? 10 : 25;
      const rounded = wholeSteps(ml, step, rounding) * step;
      return rounded < 1000 ? `${rounded} mL` : '1 L';
    }
    const step = ml < 10_000 ? 0.1 : 1;
    return `${plainNumber(Number((wholeSteps(ml / 1000, step, rounding) * step).toFixed(1)))} L`;
  }
  const parts = (unit: number, name: string, by: 2 | 4 | 8) => {
    const number = fraction(volume / unit, by, rounding);
    return `${number} ${name}${/^(?:1|\d\/\d)$/.test(number) ? '' : 's'}`;
  };
  if (volume < tablespoon) return parts(teaspoon, 'teaspoon', volume < teaspoon ? 8 : 4);
  if (volume < cup / 4) return parts(tablespoon, 'tablespoon', 2);
  if (volume < gallon) return parts(cup, 'cup', volume < cup ? 8 : 4);
  return parts(gallon, 'gallon', 4);
}

/**
 * What to weigh out, and about how much that is by volume. The weight stands first: published densities of one
 * powder differ twofold, so an unknown density gives the advice to weigh one level cup instead of a guess.
 *
 * @param mass kg, zero or more
 * @param density loose bulk density of the product at hand, kg/m³; undefined when nobody measured it
 * @throws RangeError when the mass is negative or not finite
 */
export function weighAndScoop(
  mass: Kilogram,
  density: KgPerM3 | undefined,
  system: UnitSystem,
  rounding: Rounding = 'nearest',
): Message {
  const weighed = weight(mass, system, rounding);
  if (density === undefined || !(density > 0)) return { code: 'units.scoop-unknown', parameters: { mass: weighed } };
  const volume = weighable(mass, system, rounding) / density;
  return { code: 'units.scoop', parameters: { mass: weighed, scoop: scoops(volume, system, rounding) } };
}

/** Volume of a mass of loose powder, m³. @throws RangeError when the density is not above zero */
export function volumeOf(mass: Kilogram, density: KgPerM3): CubicMetre {
  if (!(density > 0)) throw new RangeError(`A density of ${density} kg/m³ has no volume`);
  return mass / density;
}
