import { conversion } from '@sorrel/almanac/conversions';
import type { Quantity, ReportColumn } from '@sorrel/almanac/report-columns';
import { type ReportUnit, reportUnits } from '@sorrel/almanac/report-units';
import { unitKey } from './plain.ts';

const byQuantity = new Map<Quantity, Map<string, ReportUnit>>();
for (const unit of reportUnits) {
  const known = byQuantity.get(unit.quantity) ?? new Map<string, ReportUnit>();
  byQuantity.set(unit.quantity, known);
  for (const spelling of [unit.unit, ...unit.spellings])
    if (!known.has(unitKey(spelling))) known.set(unitKey(spelling), unit);
}
const anywhere = new Set([...byQuantity.values()].flatMap((known) => [...known.keys()]));
/** Letters that are units only where a unit is expected: anywhere else they are names or ratings. */
const TOO_SHORT = new Set(['m', 'in', 'cm', 'mm', '"', 'me', 'meq']);

/** What a column is measured in: the sort of figure it holds and, for cations, which. */
export type Measure = Pick<ReportColumn, 'quantity' | 'element'>;

/** Whether a text is a unit of anything. */
export const isUnit = (text: string): boolean => anywhere.has(unitKey(text)) || ASKED.test(text.trim());

/** Whether a text is a unit that cannot be mistaken for a name. */
export const isPlainUnit = (text: string): boolean => isUnit(text) && !TOO_SHORT.has(unitKey(text));

/** A ton an acre may be short, long or metric: it is asked about. */
const ASKED = /^(?:t|tons?)\s*(?:\/|per )\s*(?:a|ac|acre)s?$/i;

/** Charge figures come by weight or as charge; both sorts are known for an element. */
const kinds = ({ quantity, element }: Measure): readonly Quantity[] =>
  element === '' ? [quantity] : quantity === 'charge' ? ['charge', 'nutrient'] : ['nutrient', 'charge'];

/** The unit a text names for this measure; `undefined` when it is none. */
export function unitFor(text: string, measure: Measure): ReportUnit | undefined {
  const key = unitKey(text);
  for (const kind of kinds(measure)) {
    const unit = byQuantity.get(kind)?.get(key);
    if (unit !== undefined) return unit;
  }
  return undefined;
}

/** Every unit a figure of this measure may come in. */
export const unitsFor = (measure: Measure): readonly ReportUnit[] => {
  const wanted = kinds(measure);
  return reportUnits.filter((unit) => wanted.includes(unit.quantity));
};

/**
 * What a figure in a unit is multiplied by to be in the unit of its column: %, meq/100 g, mg/kg, dS/m, cm or g/m².
 *
 * @param oxide the oxide the figure counts, when it does
 */
export function factorOf(unit: ReportUnit, { quantity, element }: Measure, oxide = ''): number {
  const perCharge =
    element === '' || unit.quantity === quantity ? 1 : conversion(`cmolc/kg ${element}`, `mg/kg ${element}`);
  const across = unit.quantity === quantity ? 1 : quantity === 'charge' ? 1 / perCharge : perCharge;
  const pure = oxide === '' || element === '' ? 1 : 1 / conversion(element, oxide);
  return unit.multiply_by * across * pure;
}
