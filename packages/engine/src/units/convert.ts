import { ok, type Result } from '../derivation/problem.ts';
import type { Dimension } from './dimension.ts';
import { parseQuantity } from './parse.ts';
import { fromSi, type Kind } from './unit-table.ts';
import { chargePerKilogram, readUnit } from './unit-text.ts';

const isDimension = (kind: Kind): kind is Dimension => kind !== 'charge' && kind !== 'conductance';

/**
 * A value in one unit, told in another of the same kind: `convert(1, 'short ton/acre', 't/ha')` is 2.2417.
 * Alkalinities may change what they count (`meq/L`, `mg/L CaCO3`, `mg/L HCO3`).
 *
 * @param value zero or more, except for temperatures
 * @returns the number in `to`; or a problem when either unit is unknown or ambiguous, or they measure different things
 */
export function convert(value: number, from: string, to: string): Result<number> {
  const target = readUnit(to);
  if (target.state !== 'unit') return parseQuantity(`1 ${to}`, 'mass', { field: 'unit' });
  const { unit, species } = target;
  const concentration = species !== undefined && unit.kind === 'massPerVolume';
  if (!concentration && !isDimension(unit.kind)) return parseQuantity(`1 ${to}`, 'chargePerMass', { field: 'unit' });
  const dimension = concentration || !isDimension(unit.kind) ? 'alkalinity' : unit.kind;
  const counts = readUnit(from);
  // Asking for meq/L of a weight of calcium carbonate is asking for its alkalinity.
  const asked =
    dimension === 'chargePerSoilVolume' &&
    counts.state === 'unit' &&
    (counts.species !== undefined || counts.unit.kind === 'alkalinity')
      ? 'alkalinity'
      : dimension;
  const si = parseQuantity(value, asked, { fallbackUnit: from, field: 'value' });
  // Said again with its unit, so that the problem quotes both.
  if (!si.ok) {
    const said = parseQuantity(`${value} ${from}`, asked, { field: 'value' });
    return said.ok ? si : said;
  }
  return ok(fromSi(concentration ? si.value / chargePerKilogram(species) : si.value, unit));
}
