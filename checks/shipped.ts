import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parse } from 'csv-parse/sync';
import type { Adapter } from './adapter.ts';
import { readCases } from './cases.ts';
import { judge } from './judge.ts';
import type { FileResult, Reasons } from './report.ts';

const here = fileURLToPath(new URL('.', import.meta.url));

/** The files of cases that come with the project, one a topic. */
export const shippedFiles: readonly string[] = readdirSync(`${here}cases`)
  .filter((file) => file.endsWith('.csv'))
  .sort()
  .map((file) => `${here}cases/${file}`);

/** Why a case misses or cannot be computed, by id, from `reasons.csv`. */
export function readReasons(): Reasons {
  const rows = parse(readFileSync(`${here}reasons.csv`, 'utf8'), { columns: true }) as Record<
    'id' | 'state' | 'reason',
    string
  >[];
  return new Map(rows.map(({ id, state, reason }) => [id, { state, reason }]));
}

/** Reads and runs one file. @throws Error when it is missing or has not the columns of a file of cases */
export function runFile(file: string, adapters: readonly Adapter[]): FileResult {
  // npm runs its commands in the project's folder; the person who typed the name may stand elsewhere.
  const path = existsSync(file) ? file : resolve(process.env.INIT_CWD ?? '', file);
  const { cases, bad } = readCases(readFileSync(path, 'utf8'));
  return { name: basename(file), outcomes: cases.map((check) => judge(check, adapters)), bad };
}
