import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

// Rooms from the highest to the lowest; the apps stand side by side. Own rule: the design's list of rooms.
const rooms = {
  'apps/web': ['store', 'print', 'intake', 'engine', 'almanac'],
  'apps/server': ['store', 'print', 'intake', 'engine', 'almanac'],
  'apps/cli': ['store', 'print', 'intake', 'engine', 'almanac'],
  'packages/print': ['engine', 'almanac'],
  'packages/store': ['engine', 'almanac'],
  'packages/intake': ['engine', 'almanac'],
  'packages/engine': ['almanac'],
  'packages/almanac': [],
} as const;
const names = ['web', 'server', 'cli', 'print', 'store', 'intake', 'engine', 'almanac'];
const folderOf = (name: string) => (['web', 'server', 'cli'].includes(name) ? `apps/${name}` : `packages/${name}`);

const root = fileURLToPath(new URL('..', import.meta.url));
let house = '';
/** Files in which the linter refused an import. */
let refused = new Set<string>();
let crossings: { file: string; allowed: boolean }[] = [];

function put(file: string, imported: string) {
  mkdirSync(dirname(join(house, file)), { recursive: true });
  writeFileSync(join(house, file), `import { thing } from '${imported}';\n\nexport const other = thing;\n`);
}

beforeAll(() => {
  house = mkdtempSync(join(tmpdir(), 'sorrel-arrows-'));
  cpSync(join(root, 'biome.json'), join(house, 'biome.json'));
  const config = JSON.parse(readFileSync(join(house, 'biome.json'), 'utf8'));
  writeFileSync(join(house, 'biome.json'), JSON.stringify({ ...config, vcs: { enabled: false } }));
  for (const [folder, below] of Object.entries(rooms))
    for (const name of names) {
      if (folderOf(name) === folder) continue;
      const allowed = (below as readonly string[]).includes(name);
      for (const [form, imported] of [
        ['package', `@sorrel/${name}`],
        ['part', `@sorrel/${name}/part`],
        ['path', `../../../../${folderOf(name)}/src/part.ts`],
      ] as const) {
        const file = `${folder}/src/${name}-by-${form}.ts`;
        put(file, imported);
        crossings.push({ file, allowed });
      }
    }
  put('packages/engine/src/reads-a-file.ts', 'node:fs');
  put('packages/engine/src/reads-a-file.test.ts', 'node:fs');
  put('packages/intake/src/reads-a-file.ts', 'node:fs');
  put('packages/intake/src/reads-a-file.test.ts', 'node:fs');
  put('packages/engine/src/app.test.ts', '@sorrel/cli');
  put('packages/engine/src/neighbour.ts', '../soil/soil.ts');
  const lint = spawnSync(
    process.execPath,
    [join(root, 'node_modules/@biomejs/biome/bin/biome'), 'lint', '--reporter=json', '--max-diagnostics=none', '.'],
    { cwd: house, encoding: 'utf8' },
  );
  const { diagnostics } = JSON.parse(lint.stdout) as {
    diagnostics: { category: string; location: { path: string } }[];
  };
  refused = new Set(
    diagnostics.filter((one) => one.category.endsWith('noRestrictedImports')).map((one) => one.location.path),
  );
});

afterAll(() => {
  rmSync(house, { recursive: true, force: true });
  crossings = [];
});

describe('arrows between the rooms', () => {
  it('lets a room import the rooms below it and refuses every other crossing, by name and by path', () => {
    expect(crossings.length).toBe(8 * 7 * 3);
    const wrong = crossings.filter(({ file, allowed }) => refused.has(file) === allowed);
    expect(wrong).toEqual([]);
  });

  it('keeps Node out of the engine and the intake but lets their tests read files', () => {
    expect(refused.has('packages/engine/src/reads-a-file.ts')).toBe(true);
    expect(refused.has('packages/engine/src/reads-a-file.test.ts')).toBe(false);
    expect(refused.has('packages/intake/src/reads-a-file.ts')).toBe(true);
    expect(refused.has('packages/intake/src/reads-a-file.test.ts')).toBe(false);
    expect(refused.has('packages/engine/src/app.test.ts')).toBe(true);
    expect(refused.has('packages/engine/src/neighbour.ts')).toBe(false);
  });
});
