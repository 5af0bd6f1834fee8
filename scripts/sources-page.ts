// Writes docs/sources.md: every source, and the tables and published cases that rest on it.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { readCases } from '../checks/cases.ts';
import { shippedFiles } from '../checks/shipped.ts';
import { checkTables } from '../packages/almanac/tables.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const data = `${root}packages/almanac/data/`;
export const page = `${root}docs/sources.md`;

/** The page as it should stand now. */
export async function sourcesPage(): Promise<string> {
  const names = readdirSync(data)
    .filter((file) => file.endsWith('.csv'))
    .map((file) => file.slice(0, -4));
  const { tables } = await checkTables(names, (name) => readFileSync(`${data}${name}.csv`, 'utf8'));
  const users = new Map<string, Set<string>>();
  const count = (key: string, user: string) => users.set(key, (users.get(key) ?? new Set()).add(user));
  for (const [name, rows] of Object.entries(tables))
    for (const row of rows) for (const key of (row.sources as string[] | undefined) ?? []) count(key, name);
  for (const file of shippedFiles)
    for (const { source } of readCases(readFileSync(file, 'utf8')).cases)
      for (const key of source.split(';')) count(key.trim(), 'published checks');

  const known = [...(tables.sources ?? [])].sort((a, b) => String(a.key).localeCompare(String(b.key), 'en'));
  const cited = known.filter(({ key }) => users.has(String(key)));
  return [
    '# Sources',
    '',
    '<!-- Written by `npm run sources`. Edit packages/almanac/data/sources.csv, not this page. -->',
    '',
    `${cited.length} sources stand behind the tables and the published checks. The note says how a source was used; where it`,
    'says that a page was not seen, figures that rest on it are marked `memory`.',
    '',
    '| key | source | used by | note |',
    '|---|---|---|---|',
    ...cited.map((row) => {
      const { key, title, institution, year, address, note } = row as Record<string, string | undefined>;
      const uses = [...(users.get(key ?? '') ?? [])].sort();
      const citation = [title, institution, year, address]
        .filter((part) => part !== undefined)
        .map((part) => part.replace(/\.$/, ''))
        .join('. ');
      return `| ${[key, citation, uses.join(', '), note].map((cell) => (cell ?? '').replaceAll('|', '\\|')).join(' | ')} |`;
    }),
    '',
  ].join('\n');
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(page, await sourcesPage());
