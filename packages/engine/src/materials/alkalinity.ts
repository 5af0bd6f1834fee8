import { waterAlkalinity } from '@sorrel/almanac/water-alkalinity';
import type { Message } from '../derivation/message.ts';
import type { MolPerM3 } from '../units/si.ts';

/** Units in which laboratories and aquarists print the alkalinity of water. */
export type AlkalinityUnit = 'mg CaCO3/L' | 'mg HCO3/L' | 'meq/L' | 'dH' | 'grain/gal' | 'mmol/L';

/** mol_c/m³ in one unit. `mmol/L` is of HCO3; German degrees hold 10 mg CaO/L; a grain per US gallon 17.118 mg/L. Sources: CALC, SLIDEALK. */
const IN_MOL: Readonly<Record<AlkalinityUnit, number>> = {
  'mg CaCO3/L': 1 / 50.043,
  'mg HCO3/L': 1 / 61.016,
  'meq/L': 1,
  'mmol/L': 1,
  dH: 10 / 28.0385,
  'grain/gal': 17.11806 / 50.043,
};

/** Alkalinity in mol_c/m³ (= meq/L) from a printed figure. Source: CALC. */
export const alkalinityFrom = (value: number, unit: AlkalinityUnit): MolPerM3 => value * IN_MOL[unit];

/** Alkalinity in a printed unit. Source: CALC. */
export const alkalinityIn = (alkalinity: MolPerM3, unit: AlkalinityUnit): number => alkalinity / IN_MOL[unit];

export type PotSize = 'plugs' | 'small pots or flats' | '4-5 inch pots' | '6 inch pots and larger';

export interface AlkalinityVerdict {
  readonly state: 'low' | 'fine' | 'watch' | 'act';
  readonly message: Message;
  /** From here the size of pot calls for watching, mol_c/m³. */
  readonly watchAbove: MolPerM3;
}

/**
 * Judges water for pots by its alkalinity, not by its pH.
 *
 * @returns `low` below 0.8 meq/L (40 mg/L), `watch` above the pot's guide, `act` above 3 meq/L (150 mg/L)
 * @source NCSU_ALK (guides by pot size, memory), ALK_SLIDES and ALK_RANGE (act, read), NCSUWATER (low, memory)
 */
export function judgeAlkalinity(alkalinity: MolPerM3, pot: PotSize): AlkalinityVerdict {
  const watchAbove = highOf('warn', pot);
  const act = highOf('act', 'any pot');
  const low = alkalinityFrom(40, 'mg CaCO3/L');
  const state = alkalinity > act ? 'act' : alkalinity > watchAbove ? 'watch' : alkalinity < low ? 'low' : 'fine';
  const parameters = { alkalinity: { value: alkalinity, dimension: 'alkalinity' as const }, pot };
  return { state, watchAbove, message: { code: `materials.alkalinity-${state}`, parameters } };
}

function highOf(kind: 'warn' | 'act', subject: string): MolPerM3 {
  const row = waterAlkalinity.find((candidate) => candidate.kind === kind && candidate.subject === subject);
  if (row?.high === undefined) throw new RangeError(`no ${kind} level for ${subject}`);
  return row.high;
}
