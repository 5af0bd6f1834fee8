import { modelParameter } from '@sorrel/almanac/model-parameters';

/** kg CaCO3 per mole of charge. */
export const EQUIVALENT = 0.05004;

/** A parameter's default and its spread, in the unit `of` converts it to. */
export interface Spread {
  readonly kind: 'log' | 'normal' | 'none';
  /** Median (`log`), mean (`normal`) or the value. */
  readonly centre: number;
  /** Standard deviation of the natural logarithm (`log`) or in the unit (`normal`). */
  readonly sd: number;
  readonly low: number;
  readonly high: number;
}

/** Reads a row of the almanac's `model-parameters` and scales value and limits to SI. */
function spread(name: string, scale = 1): Spread {
  const row = modelParameter(name);
  return {
    kind: row.spread_kind,
    centre: row.value * scale,
    sd: row.spread_kind === 'log' ? (row.spread ?? 0) : (row.spread ?? 0) * scale,
    low: (row.low ?? (row.spread_kind === 'log' ? 0 : Number.NEGATIVE_INFINITY)) * scale,
    high: (row.high ?? Number.POSITIVE_INFINITY) * scale,
  };
}

const value = (name: string, scale = 1): number => modelParameter(name).value * scale;

/**
 * Every constant of the forecast in SI, with its symbol of `docs/model.md`. Values, spreads and citations stand in
 * the almanac's `model-parameters`. Limits of a row are limits of plausibility; only `pm`, `w`, `pH_cal` and the
 * shares are clipped to them, for the rest the spread says how far a member may go.
 */
export const P = {
  beta0: spread('beta0', EQUIVALENT / 1000),
  pm: spread('pm'),
  w: spread('w'),
  pHCal: spread('pH_cal'),
  /** Diameter loss of calcite, m/day. */
  kSoil: spread('k_d', 1e-6),
  kMedia: spread('k_d_media', 1e-6),
  fDolomite: value('f_dolomite'),
  fPhosphate: value('f_phosphate'),
  q10: value('Q10_lime'),
  fw: value('f_w'),
  etaField: spread('eta_field'),
  etaMixed: spread('eta_mixed'),
  etaAcid: spread('eta_acid'),
  /** Own acid of the place, kg CaCO3/m²/yr: 1 kmol/ha = 0.1 mol/m². */
  a0: spread('A0', 0.1 * EQUIVALENT),
  /** Drainage, m/yr (its spread is a factor). */
  drainage: spread('D', 1e-3),
  pCO2: spread('pCO2'),
  /** mol/L at 0.01 atm. */
  alkalinityCap: value('alkalinity_cap'),
  gibbsite: 10 ** value('gibbsite'),
  leached: spread('leached'),
  acidPerN: value('acid_per_N'),
  /** µg/cm²/day to kg/m²/day: 1e-9 kg over 1e-4 m². */
  kSulfur: spread('K_S', 1e-5),
  ea: value('Ea_S', 1000),
  rhoSulfur: value('rho_S', 1000),
  moistHalfwidth: value('moist_halfwidth'),
  lag: spread('lag_S'),
  pastille: value('pastille'),
  tauCarbonate: value('tau_C'),
  tauHydrated: value('tau_hydrated'),
  tauAsh: value('tau_ash'),
  tauSalt: value('tau_salt'),
  tauCompost: value('tau_compost'),
  /** Soil swapped between layers, m/yr. */
  exchange: spread('exchange', 1e-3),
  process: value('process'),
  testLab: value('test_lab'),
  alpha: value('alpha'),
  alphaPeat: value('alpha_peat'),
  surfaceAmplitude: value('surface_amplitude'),
  wilting: value('wilting'),
  /** m of water. */
  waterStore: value('water_store', 1e-3),
} as const;
