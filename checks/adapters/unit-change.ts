import { molarMass, parseFormula } from '../../packages/engine/src/materials/formula.ts';
import {
  ACRE_SOIL,
  carbonateOf,
  chargeOf,
  chargeOfCarbonate,
  chargePerKilogram,
  formFactor,
  fromSi,
  type Kind,
  massFractionOf,
  type Species,
  unitOf,
} from '../../packages/engine/src/units/index.ts';
import type { KeyUnit } from './key-unit.ts';

export interface Amount {
  readonly si: number;
  readonly kind: Kind;
  readonly subject?: string | undefined;
}

const isSpecies = (form: string | undefined): form is Species => form === 'CaCO3' || form === 'HCO3';
const isCharge = (kind: Kind): boolean => kind === 'charge' || kind === 'chargePerMass';

/** Mass of one form for a mass of another; undefined when they share nothing. */
function formRatio(from: string | undefined, to: string | undefined): number | undefined {
  if (from === undefined || to === undefined || from === to) return 1;
  if (isSpecies(from) && isSpecies(to)) return chargePerKilogram(from) / chargePerKilogram(to);
  const published = formFactor(from, to);
  if (published !== undefined) return published;
  const [own, other] = [parseFormula(from), parseFormula(to)];
  if (!own.ok || !other.ok) return undefined;
  const shared = [...own.value.keys()].find((symbol) => symbol !== 'O' && symbol !== 'H' && other.value.has(symbol));
  if (shared === undefined) return undefined;
  const perAtom = (composition: ReadonlyMap<string, number>) => molarMass(composition) / (composition.get(shared) ?? 1);
  return perAtom(other.value) / perAtom(own.value);
}

/** One step to another kind by a convention that publications of conversions use; undefined when there is none. */
function step({ si, kind, subject }: Amount, to: Kind, wanted: string | undefined): Amount | undefined {
  if (kind === 'massFraction' && to === 'massPerArea') return { si: si * ACRE_SOIL, kind: to, subject };
  if (kind === 'massPerArea' && to === 'massFraction') return { si: si / ACRE_SOIL, kind: to, subject };
  const chalk = { charge: 'mass', chargePerMass: 'massFraction' } as const;
  for (const [charge, mass] of Object.entries(chalk) as ['charge' | 'chargePerMass', 'mass' | 'massFraction'][]) {
    if (kind === charge && to === mass && wanted === 'CaCO3') return { si: carbonateOf(si), kind: to, subject: wanted };
    if (kind === mass && to === charge && subject === 'CaCO3') return { si: chargeOfCarbonate(si), kind: to };
  }
  const cation = subject ?? wanted;
  if (cation !== undefined && kind === 'chargePerMass' && to === 'massFraction')
    return { si: massFractionOf(cation, si), kind: to, subject: cation };
  if (cation !== undefined && kind === 'massFraction' && to === 'chargePerMass')
    return { si: chargeOf(cation, si), kind: to, subject: cation };
  const ofWater = kind === 'chargePerSoilVolume' || kind === 'alkalinity';
  if (ofWater && (to === 'chargePerSoilVolume' || to === 'alkalinity')) return { si, kind: to };
  if (ofWater && to === 'massPerVolume') {
    const species = isSpecies(wanted) ? wanted : 'CaCO3';
    return { si: si / chargePerKilogram(species), kind: to, subject: species };
  }
  if (kind === 'massPerVolume' && (to === 'alkalinity' || to === 'chargePerSoilVolume'))
    return { si: si * chargePerKilogram(isSpecies(subject) ? subject : 'CaCO3'), kind: to };
  return undefined;
}

/**
 * The figure of a key for an amount: another unit, another chemical form, charge for weight, acre rate for ppm.
 * A weight wanted of a charge per volume of water (`mg_HCO3`) is that in a litre.
 *
 * @returns undefined when no convention leads there
 */
export function figureOf(amount: Amount, key: KeyUnit): number | undefined {
  const perLitre = key.unit.kind === 'mass' && (amount.kind === 'alkalinity' || amount.kind === 'chargePerSoilVolume');
  const unit = perLitre
    ? { ...key.unit, kind: 'massPerVolume' as const, factor: key.unit.factor / unitOf('L').factor }
    : key.unit;
  let at: Amount | undefined = amount;
  if (at.kind !== unit.kind) {
    const direct = step(at, unit.kind, key.subject);
    const through = direct ?? step(at, 'massFraction', key.subject);
    at = direct ?? (through === undefined ? undefined : step(through, unit.kind, key.subject));
  }
  if (at === undefined || at.kind !== unit.kind) return undefined;
  const ratio = isCharge(at.kind) ? 1 : formRatio(at.subject, key.subject);
  return ratio === undefined ? undefined : fromSi(at.si * ratio, unit);
}
