import type { CheckCase } from '../../adapter.ts';

type Figures = Readonly<Record<string, unknown>>;

/** The first number of a record whose key matches. */
export function numberAt(record: Figures, key: RegExp): number | undefined {
  for (const [name, value] of Object.entries(record)) if (key.test(name) && typeof value === 'number') return value;
  return undefined;
}

/** The first text of a record whose key matches. */
export function textAt(record: Figures, key: RegExp): string | undefined {
  for (const [name, value] of Object.entries(record)) if (key.test(name) && typeof value === 'string') return value;
  return undefined;
}

/** The first record of numbers under a key that matches. */
export function tableAt(record: Figures, key: RegExp): Readonly<Record<string, number>> | undefined {
  for (const [name, value] of Object.entries(record))
    if (key.test(name) && typeof value === 'object' && value !== null && !Array.isArray(value))
      if (Object.values(value).every((cell) => typeof cell === 'number')) return value as Record<string, number>;
  return undefined;
}

export const expects = ({ expected }: CheckCase, key: RegExp): boolean =>
  Object.keys(expected).some((k) => key.test(k));

/** Every expected key that matches, with the figure for it; other keys stay without one and count as misses. */
export function answers(check: CheckCase, figure: (key: string) => unknown): Figures {
  return Object.fromEntries(Object.keys(check.expected).map((key) => [key, figure(key)]));
}

export function given<T>(
  result:
    | { readonly ok: true; readonly value: T }
    | { readonly ok: false; readonly problems: readonly { readonly message: string }[] },
): T {
  if (!result.ok) throw new Error(result.problems[0]?.message);
  return result.value;
}

/** kg in the mass unit a key names; a key without one is taken in kg. */
export const kgIn = (key: string): number =>
  /(^|_)(short_)?tons?(_|$)/.test(key)
    ? 907.18474
    : /(^|_)lbs?(_|$)/.test(key)
      ? 0.45359237
      : /(^|_)oz(_|$)/.test(key)
        ? 0.028349523
        : /(^|_)(g|gram)(_|$)/.test(key)
          ? 0.001
          : 1;
