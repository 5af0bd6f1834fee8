import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { mendLine, propose, type RowOutcome } from '../src/index.ts';
import { readAll } from '../testing/read-all.ts';

// Awkward files made by hand for this project, each with what must become of it; expected figures were worked out by hand
// from the unit conversions of the reference (EXACT, GENERAL, NOFA_APP). The workbooks were written as ECMA-376
// says, by a script of its own, not by the library that reads them.
interface Case {
  readonly why: string;
  readonly file: string;
  readonly form?: Record<string, unknown>;
  readonly problem?: string;
  readonly header?: readonly number[];
  readonly columns?: Record<string, string>;
  readonly questions?: readonly string[];
  readonly answers?: Record<string, string>;
  readonly decimal?: string;
  readonly dates?: string;
  readonly ready?: readonly number[];
  /** Line and code of the first problem; any code when it is null. */
  readonly attention?: Record<string, string | null>;
  readonly notes?: Record<string, readonly string[]>;
  readonly values?: readonly (readonly [number, string, unknown])[];
  readonly mend?: { readonly from: number; readonly holds: string };
}

const folder = new URL('files/', import.meta.url);
const cases = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .map((name) => JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as Case);

function valueAt(outcome: RowOutcome | undefined, path: string): unknown {
  if (outcome?.state !== 'ready') throw new Error(`line ${outcome?.line} is not ready`);
  let at: unknown = { ...outcome.place, test: outcome.place.tests[0] };
  for (const key of path.split('.')) at = (at as Record<string, unknown> | undefined)?.[key];
  return at;
}

describe('awkward files', () => {
  it('are at least forty', () => expect(cases.length).toBeGreaterThanOrEqual(40));

  it.each(cases.map((each) => [each.file, each.why, each] as const))('%s: %s', async (file, _, expected) => {
    const bytes = new Uint8Array(readFileSync(new URL(file, folder)));
    if (expected.problem !== undefined) {
      const proposed = await propose(bytes, file);
      if (proposed.ok) throw new Error('taken for a table');
      expect(proposed.problems.map(({ code }) => code)).toEqual([expected.problem]);
      return;
    }
    const { proposal, settled, outcomes } = await readAll(bytes, file, expected.answers);
    if (expected.form !== undefined) expect(proposal.form).toMatchObject(expected.form);
    if (expected.header !== undefined) expect(proposal.header.lines).toEqual(expected.header);
    const means = Object.fromEntries(proposal.columns.map((column) => [column.title, column.means]));
    expect(means).toMatchObject(expected.columns ?? {});
    expect(proposal.questions.map(({ id }) => id)).toEqual(expected.questions ?? []);
    if (expected.decimal !== undefined) expect(settled.mapping.decimal).toBe(expected.decimal);
    if (expected.dates !== undefined) expect(settled.mapping.dates).toBe(expected.dates);
    const ready = outcomes.filter(({ state }) => state === 'ready').map(({ line }) => line);
    const attention = outcomes.flatMap((each) => (each.state === 'attention' ? [each] : []));
    const wanted = expected.attention ?? {};
    expect({ ready, attention: attention.map(({ line }) => String(line)) }).toEqual({
      ready: expected.ready ?? [],
      attention: Object.keys(wanted),
    });
    for (const each of attention) {
      const code = wanted[each.line];
      if (code !== null) expect(each.problems[0]?.code).toBe(code);
      for (const { message, fix } of each.problems) expect(`${message}${fix}`).not.toMatch(/\{\w+\}|undefined|NaN/);
    }
    const at = new Map(outcomes.map((each) => [each.line, each]));
    for (const [line, kinds] of Object.entries(expected.notes ?? {})) {
      const outcome = at.get(Number(line));
      expect(outcome?.state === 'ready' ? outcome.notes?.map(({ kind }) => kind) : undefined).toEqual(kinds);
    }
    for (const [line, path, value] of expected.values ?? []) {
      const found = valueAt(at.get(line), path);
      // The reference rounds equivalent weights to four figures.
      if (typeof value === 'number')
        expect(Math.abs(Number(found) / value - 1), `${line} ${path}: ${found}`).toBeLessThan(3e-4);
      else expect(found ?? null, `${line} ${path}`).toBe(value);
    }
    if (expected.mend !== undefined) {
      const { from, holds } = expected.mend;
      const row = attention.find(({ line }) => line === from);
      expect(row === undefined ? '' : mendLine(row)).toContain(holds);
    }
  });
});
