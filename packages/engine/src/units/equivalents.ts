import { conversion, conversionRow } from '@sorrel/almanac/conversions';
import type { Recorder } from '../derivation/derivation.ts';
import type { CubicMetre, Fraction, KgPerM2, KgPerM3, Kilogram, MolPerKg } from './si.ts';
import { unitOf } from './unit-text.ts';

/** Exchangeable cations of soil, by symbol. */
export type Cation = 'Ca' | 'Mg' | 'K' | 'Na' | 'Al' | 'H';

/**
 * Mass of a cation that carries one mole of charge, kg/mol: 0.020039 for Ca.
 *
 * @throws RangeError for an element that is no cation of the table
 * Source: GENERAL.
 */
export function equivalentMass(symbol: Cation | (string & {})): number {
  const row = conversionRow(`cmolc/kg ${symbol}`, `mg/kg ${symbol}`);
  if (row === undefined) throw new RangeError(`The conversions table has no equivalent weight for ${symbol}`);
  return row.multiply_by / 1e4;
}

/**
 * Charge of an exchangeable cation from its mass fraction: 801.6 mg/kg Ca is 0.04 mol/kg (4 cmolc/kg).
 *
 * @param massFraction kg of the element per kg of soil, 0 to 1 (1 mg/kg = 1e-6)
 * @throws RangeError for an element that is no cation of the table
 * Sources: GENERAL, COURSE_NOTES.
 */
export function chargeOf(symbol: Cation | (string & {}), massFraction: Fraction, recorder?: Recorder): MolPerKg {
  const equivalent = equivalentMass(symbol);
  const charge = massFraction / equivalent;
  if (recorder)
    recorder.step({
      symbol: `q_${symbol}`,
      title: `Charge of ${symbol} from its weight`,
      formula: `q_${symbol} = w_${symbol} / E_${symbol}`,
      terms: [
        { symbol: `w_${symbol}`, value: massFraction, unit: 'kg/kg', origin: 'entered' },
        { symbol: `E_${symbol}`, value: equivalent, unit: 'kg/mol', origin: 'table', source: 'GENERAL' },
      ],
      value: charge,
      unit: 'mol/kg',
      sources: ['GENERAL'],
      basis: 'memory',
    });
  return charge;
}

/** Mass fraction of an exchangeable cation from its charge, the way back of `chargeOf`. Sources: GENERAL, COURSE_NOTES. */
export const massFractionOf = (symbol: Cation | (string & {}), charge: MolPerKg): Fraction =>
  charge * equivalentMass(symbol);

/** Mass of calcium carbonate that answers one mole of charge (of acid or alkali), 0.050043 kg/mol. Source: GENERAL. */
export const CARBONATE_EQUIVALENT = conversion('meq/L alkalinity', 'mg/L CaCO3') / 1000;

/** Calcium carbonate that neutralises an amount of acid, kg from mol of charge; per kg of soil or per m³ alike. Source: GENERAL. */
export const carbonateOf = (charge: number): Kilogram => charge * CARBONATE_EQUIVALENT;

/** Acid or alkali that an amount of calcium carbonate answers, mol of charge from kg. Source: GENERAL. */
export const chargeOfCarbonate = (carbonate: Kilogram): number => carbonate / CARBONATE_EQUIVALENT;

/**
 * Published factor from the mass of one chemical form to the mass of another that holds as much of the same nutrient:
 * P to P2O5 is 2.2914, K2O to K is 1/1.2046.
 *
 * @returns undefined when the table has neither direction
 * Source: GENERAL.
 */
export function formFactor(from: string, to: string): number | undefined {
  if (from === to) return 1;
  const there = conversionRow(from, to);
  if (there !== undefined) return there.multiply_by;
  const back = conversionRow(to, from);
  return back === undefined ? undefined : 1 / back.multiply_by;
}

/** The American convention for a plough layer, 2 000 000 lb to the acre in 6 2/3 in, as kg of soil per m². Source: EXACT. */
export const ACRE_SOIL: KgPerM2 = 2e6 * unitOf('lb/acre').factor;

/**
 * What a mass fraction in soil comes to per area: 50 ppm is 100 lb/acre by the American convention.
 *
 * @param soil mass of the layer, kg/m²; default the convention of 2 000 000 lb/acre
 * Source: EXACT.
 */
export const perArea = (massFraction: Fraction, soil: KgPerM2 = ACRE_SOIL): KgPerM2 => massFraction * soil;

/** Mass fraction in the soil of an amount per area, the way back of `perArea`. Source: EXACT. */
export const perSoilMass = (amount: KgPerM2, soil: KgPerM2 = ACRE_SOIL): Fraction => amount / soil;

/** How many times more acid one pH is than another: `acidityRatio(5, 6)` is 10. Source: msstate-ph. */
export const acidityRatio = (ph: number, than: number): number => 10 ** (than - ph);

/**
 * What was in the soil, from the reading of an extract: reading × dilution × extractant ÷ soil.
 *
 * @param reading mass per volume in the diluted extract, kg/m³ (1 mg/L = 0.001)
 * @param extractant volume of extractant, m³
 * @param soil kg of soil extracted, over 0
 * @param dilution how many times the extract was diluted, 1 or more
 * @throws RangeError when no soil was extracted
 * Source: COURSE_NOTES.
 */
export function soilFromExtract(reading: KgPerM3, extractant: CubicMetre, soil: Kilogram, dilution: number): Fraction {
  if (!(soil > 0)) throw new RangeError(`An extract of ${soil} kg of soil says nothing`);
  return (reading * dilution * extractant) / soil;
}
