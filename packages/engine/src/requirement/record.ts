import type { Basis, Recorder, Term } from '../derivation/derivation.ts';
import { curveShape } from '../soil/buffer-curve.ts';
import type { Capacity, Figure } from './implied.ts';
import type { MethodInput, Reading, RequirementMethod } from './method.ts';

const shapeTerms: readonly Term[] = [
  { symbol: 'pm', value: curveShape.pm, unit: 'pH', origin: 'table', source: 'NELSU10' },
  { symbol: 'w', value: curveShape.w, unit: 'pH', origin: 'table', source: 'LIU04' },
];

/** Symbol under which a reading's result is found again by the reconciler. */
export const readingSymbol = (method: string): string => `ln beta0 (${method})`;

/** Records the published figure itself, in its own unit. Called by the method that computed it. */
export function recordPublished(
  recorder: Recorder,
  method: RequirementMethod,
  figure: { readonly formula: string; readonly terms: readonly Term[]; readonly value: number; readonly unit: string },
): void {
  recorder.step({
    symbol: 'LR_published',
    title: method.title,
    formula: figure.formula,
    terms: figure.terms,
    value: figure.value,
    unit: figure.unit,
    sources: method.sources,
    basis: method.basis,
    note: method.domain,
  });
}

export function recordFigure(
  recorder: Recorder,
  method: RequirementMethod,
  input: MethodInput,
  figure: Figure,
  reading: Reading,
): void {
  recorder.step({
    symbol: 'LR',
    title: 'the same, as pure calcium carbonate on this bed, with the allowance for coarse lime taken out',
    formula: 'LR = LR_published x u / k x m_bed / m_published',
    terms: [
      { symbol: 'LR_published', value: figure.value, unit: figure.unit, origin: 'step' },
      {
        symbol: 'u',
        value: figure.rate / figure.value,
        unit: 'kg/m2 (kg/kg) per unit',
        origin: 'table',
        source: 'EXACT',
      },
      { symbol: 'k', value: figure.allowance, unit: '1', origin: 'table', source: method.sources[0] ?? 'SORREL' },
      { symbol: 'm_bed', value: input.layer.mass, unit: 'kg/m2', origin: 'entered' },
      {
        symbol: 'm_published',
        value: figure.soilMass,
        unit: 'kg/m2',
        origin: 'table',
        source: method.sources[0] ?? 'SORREL',
      },
    ],
    value: reading.pure,
    unit: 'kg/m2',
    sources: [...method.sources, 'derived'],
    basis: 'derived',
  });
  recordBeta0(
    recorder,
    method,
    reading,
    'derived',
    'ln beta0 = ln(LR / m_bed / (w sinh((T - pm)/w) - w sinh((pH - pm)/w)))',
    [
      { symbol: 'LR', value: reading.pure, unit: 'kg/m2', origin: 'step' },
      { symbol: 'm_bed', value: input.layer.mass, unit: 'kg/m2', origin: 'entered' },
      { symbol: 'T', value: figure.targetPh, unit: 'pH', origin: 'table', source: method.sources[0] ?? 'SORREL' },
      { symbol: 'pH', value: input.present.mean, unit: 'pH', origin: 'entered' },
      { symbol: 'sd of pH', value: input.present.sd, unit: 'pH', origin: 'entered' },
      ...shapeTerms,
    ],
  );
}

export function recordCapacity(
  recorder: Recorder,
  method: RequirementMethod,
  input: MethodInput,
  figure: Capacity,
  reading: Reading,
): void {
  recordBeta0(
    recorder,
    method,
    reading,
    'derived',
    'ln beta0 = ln(LBC (b - a) / (w sinh((b - pm)/w) - w sinh((a - pm)/w)))',
    [
      { symbol: 'LR_published', value: figure.value, unit: figure.unit, origin: 'step' },
      { symbol: 'LBC', value: figure.capacity, unit: 'kg CaCO3/kg/pH', origin: 'choice' },
      { symbol: 'a', value: figure.from, unit: 'pH', origin: 'table', source: method.sources[0] ?? 'SORREL' },
      { symbol: 'b', value: figure.to, unit: 'pH', origin: 'table', source: method.sources[0] ?? 'SORREL' },
      { symbol: 'm_bed', value: input.layer.mass, unit: 'kg/m2', origin: 'entered' },
      ...shapeTerms,
    ],
  );
}

function recordBeta0(
  recorder: Recorder,
  method: RequirementMethod,
  reading: Reading,
  basis: Basis,
  formula: string,
  terms: readonly Term[],
): void {
  recorder.step({
    symbol: readingSymbol(method.id),
    title: 'the least resistance of the soil that this figure implies, as a logarithm',
    formula,
    terms: [...terms, { symbol: 'spread', value: reading.sdLog, unit: 'ln', origin: 'choice' }],
    value: reading.logBeta0,
    unit: 'ln(kg CaCO3/kg/pH)',
    sources: [...method.sources, 'NELSU10', 'SORREL'],
    basis,
  });
}
