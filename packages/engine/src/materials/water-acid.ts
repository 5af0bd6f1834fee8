import { waterAcidOf } from '@sorrel/almanac/acids-for-water';
import type { Recorder } from '../derivation/derivation.ts';
import { fail, ok, type Result } from '../derivation/problem.ts';
import type { CubicMetre, Kilogram, MolPerM3, Ph } from '../units/si.ts';
import { molarMass, parseFormula } from './formula.ts';

/** First dissociation constant of carbonic acid at 25 °C as pK (CHEM). */
const PK_CARBONIC = 6.35;

/** An acid as it stands in the bottle. */
export interface WaterAcid {
  readonly formula: string;
  /** kg acid per kg liquid, 0 to 1. */
  readonly share: number;
  /** kg/m³. */
  readonly density: number;
  /** Acid given per mole at the end pH: sulfuric 2, phosphoric 1.04, citric 2.12 at pH 5.8. */
  readonly equivalentsPerMol: number;
}

/**
 * Strength of an acid, mol_c/m³ (= meq/L): `N = density · share · n / M`.
 *
 * @source CALC
 */
export function acidStrength(acid: WaterAcid): Result<MolPerM3> {
  const composition = parseFormula(acid.formula);
  if (!composition.ok) return composition;
  return ok((acid.density * acid.share * acid.equivalentsPerMol) / molarMass(composition.value));
}

/**
 * Volume of acid that takes an amount of alkalinity out of water, m³: `V = V_w (A1 − A2) / N`.
 *
 * @param water m³ of water (>= 0)
 * @param removed A1 − A2, mol_c/m³ (>= 0); leave 40 to 60 mg CaCO3/L, and take out at most 80 %
 * @param strength N, mol_c/m³ (> 0)
 * @source CALC; ACIDT, UMASSACID
 */
export function acidVolume(water: CubicMetre, removed: MolPerM3, strength: MolPerM3, recorder?: Recorder): CubicMetre {
  const value = (water * removed) / strength;
  if (recorder)
    recorder.step({
      symbol: 'V_acid',
      title: 'Acid for the water',
      formula: 'V_acid = V_w · dA / N',
      terms: [
        { symbol: 'V_w', value: water, unit: 'm³', origin: 'entered' },
        { symbol: 'dA', value: removed, unit: 'mol/m³', origin: 'entered' },
        { symbol: 'N', value: strength, unit: 'mol/m³', origin: 'table', source: 'CALC' },
      ],
      value,
      unit: 'm³',
      sources: ['CALC', 'UMASSACID'],
      basis: 'derived',
    });
  return value;
}

/**
 * Alkalinity left when water is brought to a pH, mol_c/m³: `A2 = A1 f(p2)/f(p1)`, `f = 1/(1 + 10^(6.35 − pH))`.
 *
 * @source CHEM; at pH 5.8 about 22 % is left, at 6.2 about 41 %
 */
export function alkalinityAtPh(alkalinity: MolPerM3, from: Ph, to: Ph): MolPerM3 {
  const kept = (ph: Ph) => 1 / (1 + 10 ** (PK_CARBONIC - ph));
  return (alkalinity * kept(to)) / kept(from);
}

/**
 * Dry acid a gardener may stir into water at home, kg. Only citric acid: every other acid is refused.
 *
 * @param key almanac key of the acid, e.g. `citric-dry`
 * @param water m³
 * @param removed alkalinity to take out, mol_c/m³
 * @source CALC; UMASS (citric the mildest)
 */
export function homeAcidDose(key: string, water: CubicMetre, removed: MolPerM3): Result<Kilogram> {
  const row = waterAcidOf(key);
  if (row === undefined || !row.home || row.strengthUnit !== 'meq/g')
    return fail({
      code: 'materials.refuse-strong-acid',
      field: 'acid',
      value: key,
      message: `We do not give a home dose for ${row?.name ?? `"${key}"`}.`,
      fix: 'Use rainwater, an ammonium feed, or dry citric acid.',
    });
  // meq/g is mol/kg.
  return ok((water * removed) / row.strength);
}
