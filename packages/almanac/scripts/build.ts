// Validates every data table by its schema and writes it as a typed module, so that a bad row stops the build.
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { checkTables } from '../tables.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const names = readdirSync(`${root}data`)
  .filter((file) => file.endsWith('.csv'))
  .map((file) => file.slice(0, -4));
const { tables, problems } = await checkTables(names, (name) => readFileSync(`${root}data/${name}.csv`, 'utf8'));
if (problems.length > 0) {
  for (const problem of problems) console.error(problem);
  process.exit(1);
}
rmSync(`${root}src/generated`, { recursive: true, force: true });
mkdirSync(`${root}src/generated`, { recursive: true });
for (const [name, rows] of Object.entries(tables)) {
  const literal = JSON.stringify(JSON.stringify(rows));
  writeFileSync(
    `${root}src/generated/${name}.ts`,
    `// Written by scripts/build.ts from data/${name}.csv; edit the table, not this file.\n` +
      `import type { output } from 'zod';\nimport type { row } from '../../schemas/${name}.ts';\n\n` +
      `export type Row = Readonly<output<typeof row>>;\n` +
      `export const rows: readonly Row[] = JSON.parse(\n  ${literal},\n);\n`,
  );
}
console.log(`almanac: ${names.length} tables, ${Object.values(tables).reduce((n, rows) => n + rows.length, 0)} rows`);
