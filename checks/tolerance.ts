import type { CheckCase } from './adapter.ts';

/** How far our figure may stand from the published one. */
export type Bound =
  | { readonly kind: 'exact' }
  /** Words, compared without case, spacing or punctuation. */
  | { readonly kind: 'text' }
  | { readonly kind: 'absolute'; readonly below: number; readonly above: number }
  /** Shares of the published figure, 0.01 = 1 %. */
  | { readonly kind: 'relative'; readonly below: number; readonly above: number }
  /** Between `low` and `high` times the published figure. */
  | { readonly kind: 'factor'; readonly low: number; readonly high: number }
  /** Our figure lies in a stated range, whatever the published figure. */
  | { readonly kind: 'inside'; readonly low: number; readonly high: number }
  /** Same way from a start; for keys that end in _min, _max, _below, _above our figure keeps to that side. */
  | { readonly kind: 'direction'; readonly from?: number }
  /** Shown beside the published figure and not judged, because the publication is not expected to be met. */
  | { readonly kind: 'shown' };

export interface Tolerance {
  /** The bound for a key of `expected`. */
  boundFor(key: string): Bound;
  /** The bound for the model's figure under `<key>_model`; undefined when the text speaks of no model. */
  readonly model?: Bound;
  /** The published order of the figures must be kept as well. */
  readonly ordered: boolean;
  /** What the text says that could not be turned into a bound, and what was done instead. */
  readonly remarks: readonly string[];
}

const number = String.raw`(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?`;
const N = `(${number})`;
const exact: Bound = { kind: 'exact' };
/** Same power of ten after rounding: within a factor of the square root of ten. */
const sameMagnitude = Math.sqrt(10);

/** Words that may stand before a bare figure without changing what it means. */
const lead = String.raw`^(?:[a-z_ ]*?(?:\+-|\+/-|±|<=?|≤)|(?:(?:within|abs|absolute|model|rule|table)\s+)*)\s*`;
/** After a bare figure only words may follow: a unit, `abs`, `on others`. */
const tail = String.raw`\s*[a-z_/ ]*$`;

/** The phrases of the language, first match wins. Each turns the matched figures into a bound. */
const phrases: readonly (readonly [RegExp, (...figures: number[]) => Bound])[] = [
  [/not expected to match/, () => ({ kind: 'shown' })],
  [/\b(exact|exactly|identical|equal)\b|^(?:table )?lookup$/, () => exact],
  [/^qualitative\b|^(?:sign|direction|ordering|ratio)\b[^0-9]*$/, () => ({ kind: 'direction' })],
  [/^text$/, () => ({ kind: 'text' })],
  [/\border of magnitude\b/, () => ({ kind: 'factor', low: 1 / sameMagnitude, high: sameMagnitude })],
  [new RegExp(`\\bup to ${N}\\s*(?:x|times)`), (high) => ({ kind: 'factor', low: 1, high })],
  [new RegExp(`\\bfactor (?:of )?${N}`), (f) => ({ kind: 'factor', low: 1 / f, high: f })],
  [
    new RegExp(`\\b(?:accept|inside|between|range|near)\\s+${N}\\s*(?:-|to|and)\\s*${N}`),
    (low, high) => ({ kind: 'inside', low, high }),
  ],
  [
    new RegExp(`-\\s*${N}\\s*%?\\s*/\\s*\\+\\s*${N}\\s*%`),
    (below, above) => ({ kind: 'relative', below: below / 100, above: above / 100 }),
  ],
  [
    new RegExp(`${lead}${N}\\s*(?:%|percent\\b)${tail}`),
    (share) => ({ kind: 'relative', below: share / 100, above: share / 100 }),
  ],
  [new RegExp(`${lead}${N}${tail}`), (step) => ({ kind: 'absolute', below: step, above: step })],
];

/** Words of the language itself, which name no key. */
const ownWords = new Set(
  'abs absolute accept and be between by each exact factor grid inside initial kept lookup magnitude match may model near never not of on order others range rate rule table text the to tool unit units up using within'.split(
    ' ',
  ),
);

interface Clause {
  readonly bound: Bound;
  readonly model: boolean;
  /** Words that may name a key: before the figure, after it as a unit, or after `on`. */
  readonly names: readonly string[];
  readonly others: boolean;
}

/**
 * Reads the tolerance of a case, e.g. `0.05`, `1%`, `+-3%`, `3 lb; 0.3 pct`, `0.01 on cmolc; 1 on others`, `exact`,
 * `within factor 2`, `model +-35%; table lookup exact`, `each rate inside 200-850`, `1 pct (MgO 2)`, `text`.
 * Parts between `;` are matched to keys by the word after `on`, by unit or by name, else in order. A figure in
 * brackets after an input's value replaces the figure before it. What cannot be read is taken as exact, with a remark.
 */
export function readTolerance(check: Pick<CheckCase, 'tolerance' | 'inputs' | 'expected'>): Tolerance {
  const remarks: string[] = [];
  const parts = check.tolerance.split(';').map((part) => part.trim().toLowerCase());
  const clauses: Clause[] = [];
  for (const part of parts) {
    if (part === '') continue;
    const clause = readClause(part, check.inputs);
    if (clause) clauses.push(clause);
    else remarks.push(`"${part}" is not a bound we can read`);
  }
  const plain = clauses.filter((clause) => !clause.model);
  const model = clauses.find((clause) => clause.model);
  // A text that speaks only of the model is about the figure itself.
  const judged = plain.length > 0 || !model ? plain : [model];
  if (judged.length === 0) remarks.push(`taken as exact`);

  const keys = Object.keys(check.expected);
  const bounds = assign(judged, keys);
  for (const key of keys)
    if (!bounds.has(key) && judged.length > 0) remarks.push(`no bound is given for ${key}: taken as exact`);
  return {
    boundFor: (key) => bounds.get(key) ?? exact,
    ...(model && plain.length > 0 && { model: model.bound }),
    ordered: /\border kept\b|\bordering\b/.test(check.tolerance.toLowerCase()),
    remarks,
  };
}

function readClause(part: string, inputs: CheckCase['inputs']): Clause | undefined {
  let text = part.replace(/\([^)]*\)|\busing\b.*$/g, ' ').trim();
  for (const [, value = '', figure = ''] of part.matchAll(new RegExp(`\\(\\s*(\\S+) ${N}\\s*\\)`, 'g')))
    if (Object.values(inputs).some((input) => String(input).toLowerCase() === value))
      text = text.replace(new RegExp(number), figure);
  for (const [pattern, bound] of phrases) {
    const match = pattern.exec(text);
    if (!match) continue;
    const words = text.replace(new RegExp(number, 'g'), ' ');
    return {
      bound: bound(...match.slice(1).map((figure) => Number(figure ?? 0))),
      model: /\bmodel\b/.test(text),
      names: words.split(/[^a-z]+/).filter((word) => word !== '' && !ownWords.has(word)),
      others: /\bon others?\b|\bothers$/.test(text),
    };
  }
  return undefined;
}

/** Which clause speaks for which key: by the most words in common, then `on others`, then in order. */
function assign(clauses: readonly Clause[], keys: readonly string[]): Map<string, Bound> {
  const bounds = new Map<string, Bound>();
  const unnamed: Clause[] = [];
  for (const clause of clauses) {
    const shared = keys.map((key) => {
      const parts = key.toLowerCase().split(/[^a-z]+/);
      return clause.names.filter((name) => parts.includes(name)).length;
    });
    const most = Math.max(...shared);
    if (most === 0 || clause.others) unnamed.push(clause);
    else for (const [at, key] of keys.entries()) if (shared[at] === most) bounds.set(key, clause.bound);
  }
  const open = keys.filter((key) => !bounds.has(key));
  const forAll = unnamed.find((clause) => clause.others) ?? (clauses.length === 1 ? unnamed[0] : undefined);
  if (forAll) for (const key of open) bounds.set(key, forAll.bound);
  else
    for (const [at, clause] of unnamed.entries()) {
      const key = open[at];
      if (key !== undefined) bounds.set(key, clause.bound);
    }
  return bounds;
}
