import { type NswEcecRow, nswEcecTable } from '@sorrel/almanac/nsw-ecec';
import type { SoilTest } from '../evidence/soil-test.ts';
import { described, publishedSoilMass } from './described.ts';
import { implied } from './implied.ts';
import { type Line, lineOf, valueAt } from './line.ts';
import type { RequirementMethod } from './method.ts';
import { beyond, NOT_GIVEN, NOT_MINERAL, TOO_CLOSE } from './outcome.ts';
import { TONNE_PER_HECTARE } from './published-units.ts';
import { recordPublished } from './record.ts';
import { nearestTarget } from './targets.ts';

export type NswTarget = 5.2 | 5.5;
const LOW: NswTarget = 5.2;
const HIGH: NswTarget = 5.5;
const targets: readonly NswTarget[] = [LOW, HIGH];

const sound = (row: NswEcecRow): boolean => row.suspect === 'no';
const column = (from: number, to: NswTarget): Line =>
  lineOf(
    nswEcecTable
      .filter((row) => row.ph_cacl2_from === from && row.ph_cacl2_to === to && sound(row))
      .map((row) => [row.ecec_cmol_per_kg, row.t_per_ha]),
  );
const starts = [4, 4.3, 4.7] as const;
const columns: readonly Line[] = starts.map((from) => column(from, LOW));
const lastStep = column(LOW, HIGH);

/** The cell as printed, the doubtful one included; undefined when the table has no such cell. [NSW-AC19, memory] */
export const nswPrintedCell = (ecec: number, from: number, to: number): number | undefined =>
  nswEcecTable.find((row) => row.ecec_cmol_per_kg === ecec && row.ph_cacl2_from === from && row.ph_cacl2_to === to)
    ?.t_per_ha;

/** Rate to 5.2 from any pH of 4.0 to 5.2: straight between the printed starts, and down to nothing at 5.2. */
function toLow(ecec: number, from: number): number {
  for (let index = 0; index < starts.length; index++) {
    const start = starts[index] as number;
    const next = starts[index + 1] ?? LOW;
    if (from > next) continue;
    const here = valueAt(columns[index] as Line, ecec);
    const there = index + 1 < starts.length ? valueAt(columns[index + 1] as Line, ecec) : 0;
    return here + ((there - here) * (from - start)) / (next - start);
  }
  return 0;
}

/**
 * New South Wales: t/ha of pure lime to 10 cm, straight lines between the printed cells, leaving out the one cell
 * that looks like a misprint.
 *
 * @param ecec effective CEC, 1 to 15 cmol_c/kg; NaN outside
 * @param from present pH in CaCl2, 4.0 to 5.5; NaN below, 0 at or above the target
 * @param to 5.2 or 5.5 in CaCl2
 * @source NSW-AC19 (from memory)
 */
export function nswEcecTonnePerHectare(ecec: number, from: number, to: NswTarget): number {
  if (!(from >= 4 - 1e-9)) return Number.NaN;
  if (from >= to) return 0;
  const low = from < LOW ? toLow(ecec, from) : 0;
  if (to === LOW) return low;
  return low + (valueAt(lastStep, ecec) * (HIGH - Math.max(from, LOW))) / (HIGH - LOW);
}

/** Water reads 0.5 to 0.8 above CaCl2: the middle, when no CaCl2 reading is given. [NSW-gloss, read] */
const WATER_ABOVE_CACL2 = 0.65;
const CMOL_PER_MOL = 100;

/** Effective CEC in cmol_c/kg: as given, else the sum of the cations with aluminium. */
function effectiveCec(test: SoilTest): number | undefined {
  if (test.cec !== undefined && test.cecBasis === 'effective') return test.cec * CMOL_PER_MOL;
  const { aluminium, calcium, magnesium } = test;
  if (aluminium === undefined || calcium === undefined || magnesium === undefined) return undefined;
  return (aluminium + calcium + magnesium + (test.potassium ?? 0) + (test.sodium ?? 0)) * CMOL_PER_MOL;
}

const about = described('nsw-ecec');
const OUTSIDE = beyond(about.domain);
const SOIL_MASS = publishedSoilMass(about.id);
const UNIT = 't/ha pure lime, 10 cm';

export const nswEcec: RequirementMethod = {
  ...about,
  kind: 'cec',
  direction: 'raise',
  read(input, recorder) {
    const ecec = effectiveCec(input.test);
    if (ecec === undefined) return NOT_GIVEN;
    if (input.medium !== 'mineral') return NOT_MINERAL;
    const { ph } = input.test;
    const from = ph?.method === 'cacl2-0.01M' ? ph.value : input.present.mean - WATER_ABOVE_CACL2;
    const shift = input.present.mean - from;
    const to = nearestTarget(targets, input.targetPh - shift, from) as NswTarget | undefined;
    if (to === undefined) return TOO_CLOSE;
    const value = nswEcecTonnePerHectare(ecec, from, to);
    if (Number.isNaN(value)) return OUTSIDE;
    if (recorder)
      recordPublished(recorder, nswEcec, {
        formula: 'table(ECEC, pHCa, T), straight lines between cells',
        terms: [
          { symbol: 'ECEC', value: ecec, unit: 'cmolc/kg', origin: 'entered' },
          { symbol: 'pHCa', value: from, unit: 'pH in CaCl2', origin: 'entered' },
          { symbol: 'T', value: to, unit: 'pH in CaCl2', origin: 'choice' },
        ],
        value,
        unit: UNIT,
      });
    return implied(
      nswEcec,
      input,
      {
        value,
        unit: UNIT,
        rate: value * TONNE_PER_HECTARE,
        allowance: about.allowance,
        targetPh: to + shift,
        soilMass: SOIL_MASS,
      },
      recorder,
    );
  },
};
