import { type SmpTableRow, smpTableRows } from '@sorrel/almanac/smp-table';
import type { Recorder } from '../derivation/derivation.ts';
import type { Ph } from '../units/si.ts';
import { described, publishedSoilMass } from './described.ts';
import { implied } from './implied.ts';
import { type Line, lineOf, valueAt } from './line.ts';
import type { MethodInput, MethodOutcome, RequirementMethod } from './method.ts';
import { beyond, NOT_GIVEN, NOT_MINERAL, TOO_CLOSE } from './outcome.ts';
import { SHORT_TON_PER_ACRE } from './published-units.ts';
import { recordPublished } from './record.ts';
import { smpBufferPh, smpSpread } from './smp-buffer.ts';
import { nearestTarget } from './targets.ts';

export type SmpColumn = SmpTableRow['column'];

const column = (name: SmpColumn): Line =>
  lineOf(smpTableRows.filter((row) => row.column === name).map((row) => [row.buffer_ph, row.short_ton_per_acre]));
const columns: Readonly<Record<SmpColumn, Line>> = {
  'pure 7.0': column('pure 7.0'),
  'ag-ground top': column('ag-ground top'),
  'ag-ground 6.5': column('ag-ground 6.5'),
  'ag-ground 6.0': column('ag-ground 6.0'),
  'organic 5.2': column('organic 5.2'),
};

/**
 * The SMP table: short ton per acre, 8 in; pure CaCO3 in the first column, ag-ground limestone in the others.
 * Straight lines between its rows.
 *
 * @param bufferPh SMP buffer pH, 4.8 to 6.8; NaN outside
 * @source NCR221 (from memory), after SMP1961
 */
export const smpTableShortTonPerAcre = (bufferPh: Ph, name: SmpColumn): number => valueAt(columns[name], bufferPh);

function read(
  method: RequirementMethod,
  input: MethodInput,
  bufferPh: Ph,
  name: SmpColumn,
  targetPh: Ph,
  recorder?: Recorder,
): MethodOutcome {
  const value = smpTableShortTonPerAcre(bufferPh, name);
  if (Number.isNaN(value)) return OUTSIDE;
  const unit = name === 'pure 7.0' ? 'short ton/acre pure CaCO3, 8 in' : 'short ton/acre ag-ground, 8 in';
  if (recorder)
    recordPublished(recorder, method, {
      formula: `table(B), column ${name}, straight lines between rows`,
      terms: [{ symbol: 'B', value: bufferPh, unit: 'SMP buffer pH', origin: 'entered' }],
      value,
      unit,
    });
  return implied(
    method,
    input,
    {
      value,
      unit,
      rate: value * SHORT_TON_PER_ACRE,
      allowance: method.allowance,
      targetPh,
      soilMass: SOIL_MASS,
      spread: smpSpread(method, input),
    },
    recorder,
  );
}

const pure = described('smp-table-pure');
const agGround = described('smp-table');
const OUTSIDE = beyond(agGround.domain);
const SOIL_MASS = publishedSoilMass(agGround.id);
const pureTargets: readonly Ph[] = [7];
const mineralTargets: readonly Ph[] = [6, 6.5];
const organicTargets: readonly Ph[] = [5.2];

/** The column for pure CaCO3 to pH 7.0: the one part of the table that holds no allowance for limestone. */
export const smpTablePure: RequirementMethod = {
  ...pure,
  kind: 'buffer pH',
  direction: 'raise',
  read(input, recorder) {
    const bufferPh = smpBufferPh(input);
    if (bufferPh === undefined) return NOT_GIVEN;
    if (input.medium === 'organic' || input.medium === 'soilless') return NOT_MINERAL;
    const target = nearestTarget(pureTargets, input.targetPh, input.present.mean);
    if (target === undefined) return TOO_CLOSE;
    return read(smpTablePure, input, bufferPh, 'pure 7.0', target, recorder);
  },
};

/**
 * The ag-ground columns. The top one is left to the Tri-State equations: it is headed 7.0 here and 6.8 there, for
 * the same figures.
 */
export const smpTableAgGround: RequirementMethod = {
  ...agGround,
  kind: 'buffer pH',
  direction: 'raise',
  read(input, recorder) {
    const bufferPh = smpBufferPh(input);
    if (bufferPh === undefined) return NOT_GIVEN;
    if (input.medium === 'soilless') return NOT_MINERAL;
    const organic = input.medium === 'organic';
    const target = nearestTarget(organic ? organicTargets : mineralTargets, input.targetPh, input.present.mean);
    if (target === undefined) return TOO_CLOSE;
    const name = organic ? 'organic 5.2' : target === 6 ? 'ag-ground 6.0' : 'ag-ground 6.5';
    return read(smpTableAgGround, input, bufferPh, name, target, recorder);
  },
};
