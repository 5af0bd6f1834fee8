import type { Result } from '../derivation/problem.ts';
import type { Dimension } from '../units/dimension.ts';
import { parseQuantity } from '../units/parse.ts';
import type { Report } from './fields.ts';
import type { Limit } from './limits.ts';
import { type Path, pathText } from './path.ts';
import { problem } from './report.ts';

/**
 * The SI value of a text quantity, held inside its limits.
 *
 * @param dimensions the kinds of unit the field takes, the usual one first
 * @returns value and the dimension it was given in, or `undefined` with the reason in the report
 */
export function measureAny(
  text: string | undefined,
  dimensions: readonly [Dimension, ...Dimension[]],
  limit: Limit,
  at: Path,
  report: Report,
): { readonly value: number; readonly dimension: Dimension } | undefined {
  if (text === undefined) return undefined;
  const field = pathText(at);
  const options = report.place === undefined ? { field } : { field, place: report.place };
  let first: Result<number> | undefined;
  for (const dimension of dimensions) {
    const parsed = parseQuantity(text, dimension, options);
    first ??= parsed;
    if (!parsed.ok) continue;
    const fault = outside(
      parsed.value,
      dimension === dimensions[0] ? limit : { ...limit, most: Number.POSITIVE_INFINITY },
    );
    if (fault === undefined) return { value: parsed.value, dimension };
    const words = { example: limit.example, high: limit.mostText };
    report.problems.push(problem(fault, { place: report.place, field }, text, words));
    return undefined;
  }
  if (first?.ok === false) report.problems.push(...first.problems);
  return undefined;
}

/** As `measureAny`, for a field that takes one kind of unit. */
export const measure = (
  text: string | undefined,
  dimension: Dimension,
  limit: Limit,
  at: Path,
  report: Report,
): number | undefined => measureAny(text, [dimension], limit, at, report)?.value;

/** Which limit a value breaks. */
export function outside(value: number, limit: Limit) {
  if (limit.least === 'more than zero' && value <= 0) return 'document.not-positive' as const;
  if (limit.least === 'zero' && value < 0) return 'document.negative' as const;
  if (value > limit.most * (1 + 1e-9))
    return limit.most === 1 ? ('document.not-a-share' as const) : ('document.too-large' as const);
  return undefined;
}
