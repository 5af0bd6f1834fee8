import type { Adapter, CheckCase } from '../adapter.ts';
import { rateKey } from '../rate-key.ts';

/** A figure of the inputs; text that is a number counts as one. */
export function input(check: CheckCase, key: string): number | undefined {
  const value = check.inputs[key];
  if (typeof value === 'number') return value;
  return typeof value === 'string' && /^-?\d+(\.\d+)?$/.test(value) ? Number(value) : undefined;
}

/** A figure that must be there. */
export function need(check: CheckCase, key: string): number {
  const value = input(check, key);
  if (value === undefined) throw new RangeError(`${key} is not a number: ${JSON.stringify(check.inputs[key])}`);
  return value;
}

export const words = (check: CheckCase, key: string): string => String(check.inputs[key] ?? '').toLowerCase();
export const method = (check: CheckCase): string => words(check, 'method');
export const isFrom = (check: CheckCase, ...keys: readonly string[]): boolean =>
  check.source.split(/[;,\s]+/).some((source) => keys.includes(source));

/** kg/m² in one of the unit a key such as `lb_CCE_per_acre` or `short_ton_per_acre_8in` names. */
export function limeUnit(key: string): number | undefined {
  const bare = key.replace(/_(CCE|ECC|CaCO3|pure|lime)(?=_|$)/gi, '').replace(/_\d+(\.\d+)?_?(in|cm)$/, '');
  return rateKey(bare)?.factor;
}

interface Rule {
  readonly name: string;
  /** Inputs that must be there. */
  readonly needs: readonly string[];
  /** Inputs that may be there; any other makes it another kind of case. */
  readonly may?: readonly string[];
  readonly when?: (check: CheckCase) => boolean;
  /** Rate in kg/m², given under every key of `expected` that names a rate. */
  readonly rate?: (check: CheckCase) => number;
  /** Figures under the keys they belong to. */
  readonly figures?: (check: CheckCase) => Readonly<Record<string, unknown>>;
}

/** An adapter for one shape of case: exactly these inputs, and only expected keys it can answer. */
export function shaped({ name, needs, may = [], when, rate, figures }: Rule): Adapter {
  const compute: Adapter['compute'] = (check) => {
    const found: Record<string, unknown> = { ...figures?.(check) };
    for (const key of Object.keys(check.expected)) {
      const unit = limeUnit(key);
      if (!(key in found) && rate !== undefined && unit !== undefined) found[key] = rate(check) / unit;
    }
    return found;
  };
  return {
    name,
    accepts(check) {
      const given = Object.keys(check.inputs);
      if (!needs.every((key) => given.includes(key))) return false;
      if (!given.every((key) => needs.includes(key) || may.includes(key))) return false;
      if (when !== undefined && !when(check)) return false;
      const answered = compute(check);
      return Object.keys(check.expected).every((key) => key in answered);
    },
    compute,
  };
}
