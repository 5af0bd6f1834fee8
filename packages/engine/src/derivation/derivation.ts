/**
 * How a figure came about: steps with symbol, formula, values, units and source. Built only when asked
 * for: every formula takes an optional `Recorder` and tells it what it did, so the fast path pays nothing.
 */
export type Basis = 'read' | 'memory' | 'derived' | 'judgement';

/** Where a term's value came from. */
export type Origin =
  /** typed in by the person or printed by the laboratory */
  | 'entered'
  /** result of an earlier step of the same derivation */
  | 'step'
  /** a row of the almanac, or a constant with a publication */
  | 'table'
  /** a setting or a default of ours, said to be one */
  | 'choice';

export interface Term {
  readonly symbol: string;
  readonly value: number | string;
  readonly unit: string;
  readonly origin: Origin;
  /** Citation key, required when `origin` is `table`. */
  readonly source?: string;
  /** Index of the step that gave the value, filled by the recorder when `origin` is `step`. */
  readonly step?: number;
}

export interface StepInput {
  /** Symbol of the result, as in `docs/model.md` and the doc comment, e.g. `LR`. */
  readonly symbol: string;
  /** What the figure is, in plain words. */
  readonly title: string;
  /** The formula in the same symbols as `terms`. */
  readonly formula: string;
  readonly terms: readonly Term[];
  readonly value: number | string;
  readonly unit: string;
  /** Citation keys that resolve in the almanac; at least one, `SORREL` for a rule of our own. */
  readonly sources: readonly string[];
  readonly basis: Basis;
  readonly note?: string;
}

export interface Step extends StepInput {
  readonly index: number;
}

export interface Derivation {
  readonly steps: readonly Step[];
}

export interface Recorder {
  step(step: StepInput): void;
}

export interface KeepingRecorder extends Recorder {
  derivation(): Derivation;
}

/** A recorder that keeps its steps and links each `step` term to the latest step with that symbol. */
export function createRecorder(): KeepingRecorder {
  const steps: Step[] = [];
  const latest = new Map<string, number>();
  return {
    step(input) {
      const terms = input.terms.map((term) => {
        const step = term.origin === 'step' ? latest.get(term.symbol) : undefined;
        return step === undefined ? term : { ...term, step };
      });
      latest.set(input.symbol, steps.length);
      steps.push({ ...input, terms, index: steps.length });
    },
    derivation: () => ({ steps: [...steps] }),
  };
}

/** What a derivation lacks: steps without a source, table terms without a citation, links that lead nowhere. */
export function gaps(derivation: Derivation): string[] {
  const found: string[] = [];
  if (derivation.steps.length === 0) found.push('no steps');
  for (const step of derivation.steps) {
    if (step.sources.length === 0) found.push(`${step.symbol}: no source`);
    for (const term of step.terms) {
      if (term.origin === 'step' && term.step === undefined)
        found.push(`${step.symbol}: ${term.symbol} comes from no earlier step`);
      if (term.origin === 'table' && !term.source) found.push(`${step.symbol}: ${term.symbol} has no source`);
    }
  }
  return found;
}

/** Two workings as one, the second after the first. */
export function joined(first: Derivation, second: Derivation): Derivation {
  const offset = first.steps.length;
  const moved = second.steps.map((step) => ({
    ...step,
    index: step.index + offset,
    terms: step.terms.map((term) => (term.step === undefined ? term : { ...term, step: term.step + offset })),
  }));
  return { steps: [...first.steps, ...moved] };
}
