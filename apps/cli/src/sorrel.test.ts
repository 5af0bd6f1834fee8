import { type SpawnSyncReturns, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { planReport } from '@sorrel/engine/document';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildCli } from '../build.mjs';
import { textWidth } from './layout.ts';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const demos = readdirSync(`${root}demo`)
  .filter((file) => file.endsWith('.yaml'))
  .map((file) => `${root}demo/${file}`);
let folder = '';
const file = (name: string, text: string): string => {
  writeFileSync(join(folder, name), text);
  return join(folder, name);
};

type Run = SpawnSyncReturns<string>;
function sorrel(args: readonly string[], input = '', env: NodeJS.ProcessEnv = {}): Run {
  const kept = { PATH: process.env.PATH, LANG: 'en_US.UTF-8', ...env };
  return spawnSync(process.execPath, [join(folder, 'dist/sorrel.mjs'), ...args], {
    encoding: 'utf8',
    input,
    env: kept,
  });
}

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'sorrel-cli-'));
  await buildCli(join(folder, 'dist'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const bed = { name: 'Bed', size: '4 x 8 ft', soil: { texture: 'loam' }, plants: ['tomato'] };
const sour = {
  date: '2026-09-14',
  by: 'laboratory',
  ph: { value: 5, in: 'water-1:1' },
  buffer: { value: 6.2, kind: 'sikora' },
};
const json = (...places: unknown[]) => JSON.stringify({ garden: 'Test', asOf: '2026-10-12', places });

describe('exit codes', () => {
  it('0 when everything was used', () => expect(sorrel(['plan', '-'], json({ ...bed, tests: [sour] })).status).toBe(0));
  it('1 when some entries could not be used, and the rest is served', () => {
    const run = sorrel(['plan', '-'], json({ ...bed, tests: [sour] }, { ...bed, name: 'Deep', depth: '-6 in' }));
    expect(run.status).toBe(1);
    expect(run.stdout).toContain('Bed (bed');
    expect(run.stderr).toMatch(/Deep, depth: .*-6 in/);
    expect(run.stderr).toContain('Mend it');
  });
  it.each([
    ['an empty file', ''],
    ['no garden', '[1, 2]'],
    ['no usable place', json({ size: '20 lb' })],
    ['bad YAML', 'garden: [a, b'],
    ['an alias that leads nowhere', 'garden: *nothing'],
    [
      'aliases that multiply',
      `a: &a [x]\nb: &b [${'*a,'.repeat(60)}]\nc: &c [${'*b,'.repeat(60)}]\nd: [${'*c,'.repeat(60)}]`,
    ],
  ])('2 for %s', (_, text) => {
    const run = sorrel(['plan', '-'], text);
    expect(run.status).toBe(2);
    expect(run.stdout).toBe('');
    expect(run.stderr.length).toBeGreaterThan(20);
    expect(run.stderr).not.toMatch(/\n\s+at |node:|\{\w+\}/);
  });
  it('2 for a file that is not there', () => expect(sorrel(['plan', 'no-such-garden.yaml']).status).toBe(2));
  it.each([
    [['dance']],
    [['plan']],
    [['plan', 'a', 'b']],
    [['plan', '-', '--units', 'furlongs']],
    [['plan', '--colour', '-']],
    [['bed']],
    [['cite']],
  ])('64 for %j', (args) => {
    const run = sorrel(args);
    expect(run.status).toBe(64);
    expect(run.stderr).toContain('See: sorrel');
  });
  it('every command explains itself', () => {
    for (const command of ['plan', 'bed', 'table', 'check', 'plants', 'materials', 'methods', 'cite', 'schema']) {
      const run = sorrel([command, '--help']);
      expect(run.status).toBe(0);
      expect(run.stdout).toContain(`sorrel ${command}`);
    }
  });
});

describe('the page of a plan', () => {
  it.each(demos)('%s reads well at 80 columns without colour', (demo) => {
    const run = sorrel(['plan', demo]);
    expect(run.status, run.stderr).toBe(0);
    expect(run.stderr).toBe('');
    for (const line of run.stdout.split('\n')) expect(textWidth(line), line).toBeLessThanOrEqual(80);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: no escape sequence may be printed
    expect(run.stdout).not.toMatch(/\u001b|\{\w+\}|undefined|NaN/);
    for (const title of ['Wanted', 'To buy for the first steps', 'Taken for granted'])
      expect(run.stdout).toContain(title);
  });
  it('is plain ASCII when asked, and when the locale says so', () => {
    for (const run of [
      sorrel(['plan', demos[0] ?? '', '--ascii']),
      sorrel(['plan', demos[0] ?? ''], '', { LANG: 'C', LC_ALL: 'C' }),
    ])
      expect(run.stdout.replace(/[€£]/g, '')).toMatch(/^[\x20-\x7e\n]*$/);
  });
  it('says the same amounts in either system', () => {
    const [us, metric] = ['us', 'metric'].map(
      (units) => sorrel(['plan', '-', '--units', units], json({ ...bed, tests: [sour] })).stdout,
    );
    const kilograms = /Step 1: ([\d.]+) kg of/.exec(metric ?? '')?.[1];
    const [, pounds = '0', ounces = '0'] = /Step 1: ([\d/ ]+) lb(?: ([\d/ ]+) oz)? of/.exec(us ?? '') ?? [];
    const number = (text: string): number =>
      text.split(' ').reduce((sum, part) => sum + Number(part.split('/')[0]) / Number(part.split('/')[1] ?? 1), 0);
    // Both are rounded down to what a scale shows: an ounce or a quarter of a pound, and 10 or 50 g.
    const difference = (number(pounds) + number(ounces) / 16) * 0.45359237 - Number(kilograms);
    expect(Number(kilograms)).toBeGreaterThan(0.5);
    expect(Math.abs(difference)).toBeLessThan(0.12);
  });
  it('shows the working with formulas, sources and what is from memory', () => {
    const run = sorrel(['plan', '-', '--why'], json({ ...bed, tests: [sour] }));
    expect(run.stdout).toContain('How the figures came about');
    // Oregon State's Sikora table speaks for a Sikora buffer pH (EM 9585).
    expect(run.stdout).toMatch(/Source: .*OSU-EM9585/);
    expect(run.stdout).toMatch(/OSU-EM9585: .*Oregon/);
    const report = planReport.parse(
      JSON.parse(sorrel(['plan', '-', '--why', '--json'], json({ ...bed, tests: [sour] })).stdout),
    );
    const steps = report.places[0]?.plan.derivation?.steps ?? [];
    expect(steps.length).toBeGreaterThan(5);
    for (const step of steps.filter((each) => each.basis === 'memory'))
      expect(run.stdout).toMatch(new RegExp(`${step.sources[0]}[^\\n]*\\s*\\(from memory, not\\s+retrieved\\)`));
  });
  it('shows one figure with what it rests on when it is named', () => {
    const all = sorrel(['plan', '-', '--why'], json({ ...bed, tests: [sour] })).stdout;
    const one = sorrel(['plan', '-', '--why=beta0'], json({ ...bed, tests: [sour] })).stdout;
    expect(one).toContain('(beta0)');
    expect(one.length).toBeLessThan(all.length);
    expect(sorrel(['plan', '-', '--why=nonsense'], json({ ...bed, tests: [sour] })).stdout).toContain(
      'No figure is called "nonsense"',
    );
  });
  it('prints JSON its own schema takes, problems and all', () => {
    for (const demo of demos)
      expect(planReport.safeParse(JSON.parse(sorrel(['plan', demo, '--json']).stdout)).error).toBeUndefined();
    const run = sorrel(['plan', '-', '--json'], json(bed, { ...bed, name: 'Deep', depth: '-6 in' }));
    expect(run.status).toBe(1);
    expect(planReport.parse(JSON.parse(run.stdout)).problems[0]).toMatchObject({ place: 'Deep', field: 'depth' });
  });
  it('reads YAML and JSON alike', () => {
    const yaml =
      'garden: Test\nasOf: 2026-10-12\nplaces:\n  - { name: Bed, size: 4 x 8 ft, soil: { texture: loam }, plants: [tomato] }\n';
    expect(sorrel(['plan', '-'], yaml).stdout).toBe(sorrel(['plan', '-'], json(bed)).stdout);
  });
});

describe('one bed', () => {
  it('is planned from what is typed', () => {
    const args = [
      'bed',
      '--ph',
      '5.0',
      '--ph-in',
      'water-1:1',
      '--buffer',
      '6.2',
      '--buffer-kind',
      'sikora',
      '--texture',
      'loam',
    ];
    const run = sorrel([...args, '--size', '4 x 8 ft', '--plants', 'tomato,carrot', '--as-of', '2026-10-12']);
    expect(run.status, run.stderr).toBe(0);
    expect(run.stdout).toMatch(/Step 1: .* (?:lb|oz) of/);
  });
  it('points back at the option that is wrong', () => {
    const run = sorrel(['bed', '--ph', '45', '--texture', 'lome']);
    expect(run.status).toBe(2);
    expect(run.stderr).toContain('--texture');
  });
});

describe('a table of tests', () => {
  const header = 'place,date,area,depth,texture,ph,ph_method,buffer_ph,buffer,plants';
  const row = (place: string, change: Record<string, string> = {}): string => {
    const cells = {
      place,
      date: '2026-09-14',
      area: '4 x 8 ft',
      depth: '6 in',
      texture: 'loam',
      ph: '5.0',
      ph_method: 'water-1:1',
    };
    return Object.values({ ...cells, buffer_ph: '6.2', buffer: 'sikora', plants: 'tomato;carrot', ...change }).join(
      ',',
    );
  };
  const faults: Record<string, string>[] = [
    { ph: '45' },
    { ph: 'sour' },
    { depth: '-6 in' },
    { depth: '6 lb' },
    { buffer_ph: '9.1' },
    { texture: 'lome' },
    { plants: 'tomatto' },
    { date: '2026-02-30' },
    { area: 'wide' },
    { extra: 'cell' },
  ];
  const table = () => {
    const lines = Array.from({ length: 1000 }, (_, index) =>
      row(`Bed ${index + 1}`, index % 100 === 50 ? faults[(index - 50) / 100] : {}),
    );
    return [header, ...lines].join('\n');
  };

  it('10 bad rows of 1,000: 990 are served in order and 10 are explained', () => {
    const bad = join(folder, 'bad.csv');
    const run = sorrel(['table', file('tests.csv', table()), '--bad', bad, '--as-of', '2026-10-12']);
    expect(run.status).toBe(1);
    const lines = run.stdout.trimEnd().split('\r\n');
    expect(lines).toHaveLength(991);
    const numbers = lines.slice(1).map((line) => Number(line.split(',')[0]));
    expect(numbers).toEqual([...numbers].sort((a, b) => a - b));
    expect(run.stderr).toContain('1000 rows read, 990 planned, 10 left out');
    const listed = readFileSync(bad, 'utf8').trimEnd().split('\r\n').slice(1);
    expect(listed.map((line) => Number(line.split(',')[0]))).toEqual(faults.map((_, index) => 52 + 100 * index));
    for (const [index] of faults.entries())
      expect(run.stderr).toContain(`line ${52 + 100 * index}, Bed ${51 + 100 * index}`);
  });
  it('gives the plan a garden document gives', () => {
    const run = sorrel(['table', '-', '--json', '--as-of', '2026-10-12'], `${header}\n${row('Bed')}`);
    expect(run.status).toBe(0);
    const made = JSON.parse(run.stdout);
    const place = {
      ...bed,
      plants: ['tomato', 'carrot'],
      depth: '6 in',
      tests: [{ ...sour, depth: '6 in', texture: 'loam' }],
    };
    const report = planReport.parse(JSON.parse(sorrel(['plan', '-', '--json', '--no-forecast'], json(place)).stdout));
    const plan = report.places[0]?.plan;
    expect(made.decision).toBe(plan?.decision);
    expect(made.step_1).toBeCloseTo(plan?.applications[0]?.mass ?? 0, 1);
  });
  it('2 for an empty table and for one in which nothing is usable', () => {
    expect(sorrel(['table', '-'], '').status).toBe(2);
    expect(sorrel(['table', '-'], `${header}\n${row('Bed', { ph: '45' })}`).status).toBe(2);
  });
  it('1 when a column is not known, with the nearest one', () => {
    const run = sorrel(['table', '-'], 'place,ph,bufer_ph\nBed,5.4,6.2\n');
    expect(run.status).toBe(1);
    expect(run.stderr).toContain('buffer_ph');
  });
});

describe('looking things up', () => {
  it('finds plants, materials, methods and sources', () => {
    expect(sorrel(['plants', 'blueberry']).stdout).toContain('blueberry-highbush');
    expect(sorrel(['materials', 'dolomitic']).stdout).toContain('dolomitic-limestone');
    expect(sorrel(['methods', 'sikora']).stdout).toContain('OSU-EM9585');
    expect(sorrel(['cite', 'OSU-EM9585']).stdout).toContain('Oregon');
    expect(JSON.parse(sorrel(['plants', 'tomato', '--json']).stdout)[0].key).toBe('tomato');
  });
  it('says what is near when nothing fits', () => {
    const run = sorrel(['plants', 'tomatto']);
    expect(run.status).toBe(2);
    expect(run.stderr).toContain('"Tomato"');
    expect(sorrel(['cite', 'OSU-EM9858']).stderr).toContain('OSU-EM9585');
  });
  it('checks a document without planning it', () => {
    const run = sorrel(['check', '-'], json(bed, { ...bed, name: 'Deep', depth: '-6 in' }));
    expect(run.status).toBe(1);
    expect(run.stdout).toContain('Deep, depth');
    expect(sorrel(['check', '-'], json(bed)).stdout).toContain('Everything was understood');
  });
});
