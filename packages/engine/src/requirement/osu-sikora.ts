import { osuSikoraTable } from '@sorrel/almanac/osu-sikora';
import type { Ph } from '../units/si.ts';
import { described, publishedSoilMass } from './described.ts';
import { implied } from './implied.ts';
import { type Line, lineOf, valueAt } from './line.ts';
import type { RequirementMethod } from './method.ts';
import { beyond, NOT_GIVEN, NOT_MINERAL, TOO_CLOSE } from './outcome.ts';
import { SHORT_TON_PER_ACRE } from './published-units.ts';
import { recordPublished } from './record.ts';
import { targetWithin } from './targets.ts';

const targets: readonly Ph[] = [...new Set(osuSikoraTable.map((row) => row.target_ph))].sort((a, b) => a - b);
const columns: readonly Line[] = targets.map((target) =>
  lineOf(
    osuSikoraTable.filter((row) => row.target_ph === target).map((row) => [row.buffer_ph, row.short_ton_per_acre]),
  ),
);
const LOWEST = targets[0] ?? Number.NaN;
const HIGHEST = targets[targets.length - 1] ?? Number.NaN;

/**
 * Oregon's table: short ton of 100-score lime per acre, 6 in deep, straight lines between its rows and columns.
 *
 * @param bufferPh Sikora buffer pH, 4.8 to 6.9; NaN outside
 * @param target 5.6 to 7.2; NaN outside
 * @source OSU-EM9585 (read)
 */
export function osuSikoraShortTonPerAcre(bufferPh: Ph, target: Ph): number {
  let right = 1;
  while (right < targets.length - 1 && (targets[right] as number) < target) right++;
  const left = columns[right - 1];
  const next = columns[right];
  const from = targets[right - 1];
  const to = targets[right];
  if (left === undefined || next === undefined || from === undefined || to === undefined) return Number.NaN;
  if (!(target >= from - 1e-9 && target <= to + 1e-9)) return Number.NaN;
  const low = valueAt(left, bufferPh);
  return low + ((valueAt(next, bufferPh) - low) * (target - from)) / (to - from);
}

const about = described('osu-sikora');
const OUTSIDE = beyond(about.domain);
const SOIL_MASS = publishedSoilMass(about.id);
const UNIT = 'short ton/acre, 6 in';

/**
 * Oregon, 2025. An SMP buffer pH may be read in it too, as a foreign reading: the two buffers agree with
 * r2 0.92 (PaganiMallarino2012).
 */
export const osuSikora: RequirementMethod = {
  ...about,
  kind: 'buffer pH',
  direction: 'raise',
  read(input, recorder) {
    const { buffer } = input.test;
    if (buffer === undefined || (buffer.method !== 'sikora' && buffer.method !== 'smp')) return NOT_GIVEN;
    if (input.medium === 'organic' || input.medium === 'soilless') return NOT_MINERAL;
    const target = targetWithin(LOWEST, HIGHEST, input.targetPh, input.present.mean);
    if (target === undefined) return TOO_CLOSE;
    const value = osuSikoraShortTonPerAcre(buffer.value, target);
    if (Number.isNaN(value)) return OUTSIDE;
    if (recorder)
      recordPublished(recorder, osuSikora, {
        formula: 'table(B, T), straight lines between rows and columns',
        terms: [
          { symbol: 'B', value: buffer.value, unit: `pH, ${buffer.method} buffer`, origin: 'entered' },
          { symbol: 'T', value: target, unit: 'pH', origin: 'choice' },
        ],
        value,
        unit: UNIT,
      });
    return implied(
      osuSikora,
      input,
      {
        value,
        unit: UNIT,
        rate: value * SHORT_TON_PER_ACRE,
        allowance: about.allowance,
        targetPh: target,
        soilMass: SOIL_MASS,
        spread: buffer.method === 'smp' ? about.sdLog.foreign : undefined,
      },
      recorder,
    );
  },
};
