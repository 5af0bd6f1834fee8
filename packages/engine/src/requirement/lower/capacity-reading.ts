import type { Recorder, Term } from '../../derivation/derivation.ts';
import { curveShape } from '../../soil/buffer-curve.ts';
import type { MolPerKg } from '../../units/si.ts';
import { span } from '../implied.ts';
import type { MethodInput, MethodOutcome, Reading, RequirementMethod } from '../method.ts';
import { readingSymbol } from '../record.ts';
import { calibrationSpread } from '../region.ts';
import { LEAST_GAP } from '../targets.ts';
import { capacityAsCarbonate } from './sulfur.ts';

/** Stretch of pH over which the acid-side tables behind both rules were set, taken when no other is asked for. [MSU-R] */
const FROM = 7.0;
const TO = 4.5;

/**
 * Turns a mean capacity into a reading: `beta0 = beta (pH - T) / span(T, pH)`. The tables behind it are straight lines
 * in pH, so it is matched to the curve over the very stretch that is asked for: the dose is then the tables' own, also
 * near neutral, where the curve alone would ask for more. `pure` is signed, negative to sour.
 *
 * @param beta mol H+ per kg soil per pH unit
 */
export function readCapacity(
  method: RequirementMethod,
  input: MethodInput,
  beta: MolPerKg,
  recorder?: Recorder,
  rule: { readonly formula: string; readonly terms: readonly Term[] } = { formula: '', terms: [] },
): MethodOutcome {
  const asked = Math.abs(input.present.mean - input.targetPh) >= LEAST_GAP;
  const [from, to] = asked ? [input.present.mean, input.targetPh] : [FROM, TO];
  const beta0 = (capacityAsCarbonate(beta) * (to - from)) / span(from, to);
  const spread = calibrationSpread(method, input);
  const reading: Reading = {
    method: method.id,
    kind: method.kind,
    logBeta0: Math.log(beta0),
    sdLog: spread,
    calibrationSd: spread,
    pure: beta0 * span(input.present.mean, input.targetPh) * input.layer.mass,
    methodTargetPh: input.targetPh,
    published: { value: beta * 1000, unit: 'mmol/kg/pH' },
  };
  if (recorder) {
    recorder.step({
      symbol: 'beta',
      title: method.title,
      formula: rule.formula,
      terms: rule.terms,
      value: beta * 1000,
      unit: 'mmol/kg/pH',
      sources: method.sources,
      basis: method.basis,
      note: method.domain,
    });
    recorder.step({
      symbol: readingSymbol(method.id),
      title: 'the least resistance of the soil that this figure implies, as a logarithm',
      formula: 'ln beta0 = ln(beta x 0.00005004 (T - pH) / (w sinh((T - pm)/w) - w sinh((pH - pm)/w)))',
      terms: [
        { symbol: 'beta', value: beta * 1000, unit: 'mmol/kg/pH', origin: 'step' },
        { symbol: 'pH', value: from, unit: 'pH', origin: asked ? 'entered' : 'choice' },
        { symbol: 'T', value: to, unit: 'pH', origin: 'choice' },
        { symbol: 'pm', value: curveShape.pm, unit: 'pH', origin: 'table', source: 'NELSU10' },
        { symbol: 'w', value: curveShape.w, unit: 'pH', origin: 'table', source: 'LIU04' },
        { symbol: 'spread', value: spread, unit: 'ln', origin: 'choice' },
      ],
      value: reading.logBeta0,
      unit: 'ln(kg CaCO3/kg/pH)',
      sources: [...method.sources, 'CHEM', 'NELSU10', 'SORREL'],
      basis: 'derived',
    });
  }
  return { state: 'reading', reading };
}
