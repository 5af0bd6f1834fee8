import type { Adapter } from './adapter.ts';
import { type BasisClass, basisClass } from './basis.ts';
import type { PlacedCase } from './cases.ts';
import { compare, type Verdict } from './compare.ts';

export interface Outcome {
  readonly check: PlacedCase;
  readonly basis: BasisClass;
  /**
   * `within` or `miss`: computed and compared; `failed`: our code threw, counted as a miss;
   * `not computable`: no adapter knows inputs of this shape.
   */
  readonly state: 'within' | 'miss' | 'failed' | 'not computable';
  readonly adapter?: string;
  readonly verdict?: Verdict;
  readonly error?: string;
}

/** Runs one case through the first adapter that accepts its shape. Never throws. */
export function judge(check: PlacedCase, adapters: readonly Adapter[]): Outcome {
  const base = { check, basis: basisClass(check) };
  const adapter = accepting(check, adapters)[0];
  if (!adapter) return { ...base, state: 'not computable' };
  try {
    const verdict = compare(check, adapter.compute(check));
    return { ...base, state: verdict.within ? 'within' : 'miss', adapter: adapter.name, verdict };
  } catch (error) {
    return {
      ...base,
      state: 'failed',
      adapter: adapter.name,
      error: error instanceof Error ? error.message : String(error),
    };
  }
}

/** Every adapter that takes the case. An adapter that trips over a strange shape does not take it. */
export function accepting(check: PlacedCase, adapters: readonly Adapter[]): Adapter[] {
  return adapters.filter((adapter) => {
    try {
      return adapter.accepts(check);
    } catch {
      return false;
    }
  });
}

interface Count {
  readonly within: number;
  readonly of: number;
}

export interface Tally extends Readonly<Record<BasisClass, Count>> {
  readonly notComputable: number;
}

/** Cases within tolerance among those computed, by basis; those nothing can compute are counted apart. */
export function tally(outcomes: readonly Outcome[]): Tally {
  const computed = outcomes.filter(({ state }) => state !== 'not computable');
  const count = (basis: BasisClass): Count => {
    const all = computed.filter((outcome) => outcome.basis === basis);
    return { within: all.filter(({ state }) => state === 'within').length, of: all.length };
  };
  return {
    read: count('read'),
    memory: count('memory'),
    derived: count('derived'),
    notComputable: outcomes.length - computed.length,
  };
}

/** The closing line. The headline counts only cases whose figure was read in a publication. */
export function closingLine({ read, memory, derived, notComputable }: Tally): string {
  const of = (count: Count) => `${count.within} of ${count.of}`;
  return `published: ${of(read)} within tolerance (memory: ${of(memory)}, derived: ${of(derived)}, not computable: ${notComputable})`;
}
