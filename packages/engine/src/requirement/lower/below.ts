import type { Recorder } from '../../derivation/derivation.ts';
import { curveShape } from '../../soil/buffer-curve.ts';
import type { KgPerM2, Ph } from '../../units/si.ts';
import { span } from '../implied.ts';
import type { MethodInput, MethodOutcome, Reading, RequirementMethod } from '../method.ts';
import { readingSymbol } from '../record.ts';
import { calibrationSpread } from '../region.ts';

const { pm, w } = curveShape;

/** Soil behind a rate by area when the publication states a depth only, or nothing: 1300 kg/m³, 15.24 cm (acidification note). */
export const TABLE_DENSITY = 1300;
export const TABLE_DEPTH = 0.1524;

/** What a publication prints for a fall of pH on this soil. */
export interface Fall {
  /** As a handbook user would see it. */
  readonly value: number;
  readonly unit: string;
  /** The acid in it as pure CaCO3 that it dissolves, kg/m², positive. */
  readonly acid: KgPerM2;
  readonly from: Ph;
  readonly to: Ph;
  /** Soil it is meant for, kg/m². */
  readonly soilMass: KgPerM2;
}

/**
 * Turns a published sulfur rate into a reading of the buffer curve: the beta0 that would need as much acid.
 *
 *     beta0 = acid / published soil mass / span(to, from)
 *     sd    = sqrt(calibration² + (sd of pH x cosh((pH - pm)/w) / span)²)
 *
 * `pure` is negative: the currency counts what sours as less than nothing.
 */
export function impliedByFall(
  method: RequirementMethod,
  input: MethodInput,
  fall: Fall,
  recorder?: Recorder,
): MethodOutcome {
  const perKg = fall.acid / fall.soilMass;
  const stretch = span(fall.to, fall.from);
  const calibration = calibrationSpread(method, input);
  const fromPh = (input.present.sd * Math.cosh((fall.from - pm) / w)) / stretch;
  const reading: Reading = {
    method: method.id,
    kind: method.kind,
    logBeta0: Math.log(perKg / stretch),
    sdLog: Math.sqrt(calibration * calibration + fromPh * fromPh),
    calibrationSd: calibration,
    pure: -perKg * input.layer.mass,
    methodTargetPh: fall.to,
    published: { value: fall.value, unit: fall.unit },
  };
  if (recorder) recordFall(recorder, method, input, fall, reading);
  return { state: 'reading', reading };
}

function recordFall(
  recorder: Recorder,
  method: RequirementMethod,
  input: MethodInput,
  fall: Fall,
  reading: Reading,
): void {
  const source = method.sources[0] ?? 'SORREL';
  recorder.step({
    symbol: 'S_published',
    title: method.title,
    formula: 'read from the publication; between its rows on a straight line',
    terms: [
      { symbol: 'pH', value: fall.from, unit: 'pH', origin: 'entered' },
      { symbol: 'T', value: fall.to, unit: 'pH', origin: 'choice' },
      { symbol: 'texture', value: textureOf(input) ?? 'not needed', unit: '1', origin: 'entered' },
    ],
    value: fall.value,
    unit: fall.unit,
    sources: method.sources,
    basis: method.basis,
    note: method.domain,
  });
  recorder.step({
    symbol: readingSymbol(method.id),
    title: 'the least resistance of the soil that this figure implies, as a logarithm',
    formula: 'ln beta0 = ln(S_published x 3.121 / m_published / (w sinh((pH - pm)/w) - w sinh((T - pm)/w)))',
    terms: [
      { symbol: 'S_published', value: fall.value, unit: fall.unit, origin: 'step' },
      { symbol: 'S_published x 3.121', value: fall.acid, unit: 'kg CaCO3/m2', origin: 'table', source: 'CHEM' },
      { symbol: 'm_published', value: fall.soilMass, unit: 'kg/m2', origin: 'table', source },
      { symbol: 'pm', value: pm, unit: 'pH', origin: 'table', source: 'NELSU10' },
      { symbol: 'w', value: w, unit: 'pH', origin: 'table', source: 'LIU04' },
      { symbol: 'spread', value: reading.sdLog, unit: 'ln', origin: 'choice' },
    ],
    value: reading.logBeta0,
    unit: 'ln(kg CaCO3/kg/pH)',
    sources: [...method.sources, 'CHEM', 'NELSU10', 'SORREL'],
    basis: 'derived',
  });
}

/** Texture class known of the place: worked out, else as the laboratory named it. */
export const textureOf = ({ texture, test }: MethodInput): string | undefined => texture?.name ?? test.texture;
