import { type ReportName, reportNames } from '@sorrel/almanac/report-names';
import { nameKey } from './plain.ts';
import { isPlainUnit, isUnit } from './units.ts';
import { methodIn } from './words-in-title.ts';

const byName = new Map<string, ReportName>();
for (const row of reportNames) if (!byName.has(nameKey(row.name))) byName.set(nameKey(row.name), row);
const longNames = [...byName.keys()].filter((key) => key.length >= 6);

/** What the words of a title say. */
export interface TitleReading {
  readonly name: ReportName;
  readonly unit: string | undefined;
  readonly method: string | undefined;
  readonly buffer: string | undefined;
  /** Whether the name stands there as the almanac has it, with other words around it, or with a letter amiss. */
  readonly how: 'exact' | 'with other words' | 'nearly';
}

/** Words around a name that do not change what it means. */
const AROUND =
  /\b(?:soil|result|results|value|test|tested|measured|level|content|determined|analysis|routine|mehlich[- ]?(?:3|iii)|m3|exchangeable|extractable|available|exch|cations?|bases?|basic|ammonium acetate|dry|air dried|sample|of|in|the)\b\.?/gi;
const LONGEST = 120;

/**
 * Reads the title of a column.
 *
 * @param parts what stands over the column, from the top; merged titles are already spread
 * @returns `undefined` when no name in it is known
 */
export function readTitle(parts: readonly string[]): TitleReading | undefined {
  const texts = parts.map((part) => part.replace(/\s+/g, ' ').trim().slice(0, LONGEST)).filter((part) => part !== '');
  const units = texts.filter((text, at) => at > 0 && isUnit(bare(text)));
  const names = texts.filter((text) => !units.includes(text));
  const all = names.join(' ');
  const method = methodIn(all, 'ph-method')?.value;
  const buffer = methodIn(all, 'buffer')?.value;
  const beside = units.at(-1);
  const orders = [names.at(-1) ?? '', all, names.at(-2) ?? ''];
  for (const how of ['exact', 'with other words', 'nearly'] as const)
    for (const text of orders) {
      const found = text === '' ? undefined : find(text, how);
      if (found === undefined) continue;
      const over = names.map((part) => unitWithin(part)).findLast((unit) => unit !== undefined);
      const unit = beside === undefined ? (found.unit ?? over) : bare(beside);
      return { name: found.name, unit, method, buffer, how };
    }
  return undefined;
}

const bare = (text: string): string => text.replace(/^[([{]\s*(.*?)\s*[)\]}]$/, '$1');

interface Found {
  readonly name: ReportName;
  readonly unit: string | undefined;
}

function find(text: string, how: TitleReading['how']): Found | undefined {
  for (const { name, unit } of split(text)) {
    const row = look(name, how);
    if (row !== undefined) return { name: row, unit };
  }
  return undefined;
}

function look(name: string, how: TitleReading['how']): ReportName | undefined {
  const key = nameKey(name);
  if (key === '') return undefined;
  if (how === 'exact') return byName.get(key);
  if (how === 'with other words') return byName.get(nameKey(name.replace(AROUND, ' '))) ?? withoutMethod(name);
  if (key.length < 6) return undefined;
  const near = longNames.filter((known) => oneApart(known, key));
  return near.length === 1 ? byName.get(near[0] ?? '') : undefined;
}

function withoutMethod(name: string): ReportName | undefined {
  for (const kind of ['ph-method', 'buffer'] as const) {
    const rest = methodIn(name, kind)?.rest;
    if (rest === undefined) continue;
    const row = byName.get(nameKey(rest)) ?? byName.get(nameKey(rest.replace(AROUND, ' ')));
    if (row !== undefined && ((kind === 'ph-method') === (row.meaning === 'ph') || row.meaning === 'buffer-ph'))
      return row;
  }
  return undefined;
}

/** The ways of taking a title for a name and a unit: as it stands, without brackets, without its first or last words. */
function* split(text: string): Generator<{ name: string; unit: string | undefined }> {
  yield { name: text, unit: undefined };
  const inner = [...text.matchAll(/[([{]([^()[\]{}]*(?:\([^()]*\))?[^()[\]{}]*)[)\]}]/g)].map(
    (match) => match[1] ?? '',
  );
  const unit = inner.map((part) => part.trim()).find((part) => isUnit(part));
  const outside = text.replace(/[([{].*?[)\]}]+/g, ' ').trim();
  if (unit !== undefined) yield { name: text.replace(unit, ' '), unit };
  if (outside !== text) yield { name: outside, unit };
  const words = text.split(/(?<=[\s,_;|])|(?=[,;|_])/);
  for (let count = 1; count < words.length; count++) {
    const head = words.slice(0, count).join('');
    const tail = words
      .slice(count)
      .join('')
      .replace(/^[\s,_;|-]+/, '')
      .trim();
    if (isUnit(bare(tail))) yield { name: head, unit: bare(tail) };
    const first = head.replace(/[\s,_;|-]+$/, '').trim();
    if (isPlainUnit(bare(first))) yield { name: tail, unit: bare(first) };
  }
  const glued = /^(%)\s*(.+)$/.exec(text) ?? /^(.+?)\s*(%)$/.exec(text);
  if (glued !== null)
    yield glued[1] === '%' ? { name: glued[2] ?? '', unit: '%' } : { name: glued[1] ?? '', unit: '%' };
}

/** A unit at the end or in the brackets of a group's title. */
function unitWithin(text: string): string | undefined {
  for (const { unit } of split(text)) if (unit !== undefined) return unit;
  return undefined;
}

/** Whether two names differ by one letter added, lost, changed or swapped with its neighbour. */
function oneApart(a: string, b: string): boolean {
  if (Math.abs(a.length - b.length) > 1) return false;
  let from = 0;
  while (from < a.length && a[from] === b[from]) from++;
  let [endA, endB] = [a.length, b.length];
  while (endA > from && endB > from && a[endA - 1] === b[endB - 1]) {
    endA--;
    endB--;
  }
  const [left, right] = [a.slice(from, endA), b.slice(from, endB)];
  if (left.length <= 1 && right.length <= 1) return true;
  return left.length === 2 && right.length === 2 && left[0] === right[1] && left[1] === right[0];
}
