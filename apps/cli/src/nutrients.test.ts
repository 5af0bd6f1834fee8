import { readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { planReport, usableReport } from '@sorrel/engine/document';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Built, built } from '../testing/built.ts';
import { textWidth } from './layout.ts';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const demos = readdirSync(`${root}demo`)
  .filter((file) => file.endsWith('.yaml'))
  .map((file) => `${root}demo/${file}`);

let cli: Built;
beforeAll(async () => {
  cli = await built();
});
afterAll(() => cli.remove());

const bed = {
  name: 'Bed',
  size: '4 x 8 ft',
  soil: { texture: 'loam' },
  plants: ['cabbage'],
  diseases: ['clubroot'],
  tests: [
    {
      date: '2026-09-14',
      by: 'laboratory',
      ph: { value: 7.8, in: 'water-1:1' },
      nutrients: [{ nutrient: 'P', by: 'mehlich-3', level: '120 lb/acre' }],
    },
  ],
};
const json = (...places: unknown[]) => JSON.stringify({ garden: 'Test', asOf: '2026-10-12', places });

describe('sorrel usable', () => {
  it('reads well at 80 columns for every demo garden, and leaves no gap in a sentence', () => {
    for (const demo of demos) {
      const run = cli.run(['usable', demo]);
      expect(run.status, run.stderr).toBe(0);
      for (const line of run.stdout.split('\n')) expect(textWidth(line), line).toBeLessThanOrEqual(80);
      expect(run.stdout).toMatch(/phosphorus +(good|fair|poor)/);
      expect(run.stdout).not.toMatch(/\{\w+\}|undefined|NaN/);
    }
  });
  it('tells a locked nutrient from a short one and never feeds it', () => {
    const run = cli.run(['usable', '-'], json(bed));
    expect(run.stdout).toContain('phosphorus: ENOUGH BUT LOCKED');
    expect(run.stdout.replace(/\s+/g, ' ')).toContain('More phosphorus in the soil will not help');
  });
  it('gives machines the verdicts with codes and sources', () => {
    const { places } = JSON.parse(cli.run(['usable', '-', '--json'], json(bed)).stdout);
    expect(places[0].nutrients.verdicts[0]).toMatchObject({ nutrient: 'P', verdict: 'enough but locked' });
    expect(places[0].nutrients.lines).toHaveLength(12);
  });
  it('keeps to its published schema for every demo garden, and to the plan of `sorrel plan`', () => {
    for (const demo of demos) {
      const usable = usableReport.parse(JSON.parse(cli.run(['usable', demo, '--json']).stdout));
      const plan = planReport.parse(JSON.parse(cli.run(['plan', demo, '--json']).stdout));
      for (const [index, { nutrients }] of usable.places.entries()) {
        const { present, target, applications } = plan.places[index]?.plan ?? {};
        expect(nutrients?.today).toBe(present?.mean);
        if (nutrients?.planned !== undefined) {
          expect(applications?.length).toBeGreaterThan(0);
          expect(nutrients.planned).toBe(target?.aim);
        }
      }
    }
  });
  it('draws one place, and asks which when there are several', () => {
    const file = join(cli.folder, 'usable.svg');
    expect(cli.run(['usable', '-', '--svg', file], json(bed)).status).toBe(0);
    expect(readFileSync(file, 'utf8')).toContain('molybdenum');
    expect(cli.run(['usable', '-', '--svg', file], json(bed, { ...bed, name: 'Other' })).status).toBe(64);
  });
  it('ends with 2 when there is no pH', () => {
    expect(cli.run(['usable', '-'], json({ name: 'Bed', size: '4 x 8 ft' })).status).toBe(2);
  });
});

describe('sorrel leaves', () => {
  it('begins with nothing and asks the question that tells most', () => {
    const run = cli.run(['leaves']);
    expect(run.status).toBe(0);
    expect(run.stdout).toContain('--pattern between-veins');
  });
  it('follows what is said, and gives machines chances that add up to one', () => {
    const args = ['leaves', '--leaves', 'young', '--pattern', 'between-veins', '--spots', 'none', '--ph', '7.8'];
    expect(cli.run(args).stdout).toMatch(/too little iron/);
    const { candidates } = JSON.parse(cli.run([...args, '--json']).stdout) as { candidates: { probability: number }[] };
    expect(candidates.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 9);
  });
  it('64 for an answer nobody knows, a pH off the scale, a stray word', () => {
    for (const args of [['--leaves', 'blue'], ['--ph', '45'], ['--ph', ''], ['stray']]) {
      const run = cli.run(['leaves', ...args]);
      expect([args, run.status]).toEqual([args, 64]);
    }
  });
  it('keeps to plain letters with --ascii', () => {
    expect(cli.run(['leaves', '--ascii']).stdout).toMatch(/^[\x20-\x7e\n]*$/);
  });
});

describe('papers from the command line', () => {
  // ISO 32000-2, 7.5.2: a PDF begins with its version.
  const isPdf = (file: string) => expect(readFileSync(file).subarray(0, 5).toString()).toBe('%PDF-');
  it('are written for what is usable, a sick plant, and a plant with and without a garden', () => {
    const file = join(cli.folder, 'page.pdf');
    const garden = demos.find((demo) => demo.includes('sour')) ?? '';
    for (const args of [
      ['usable', garden, '--place', 'Potato bed', '--pdf', file],
      ['leaves', '--leaves', 'young', '--crop', 'blueberry', '--pdf', file],
      ['plants', 'calibrachoa', '--pdf', file],
      ['plants', 'cabbage', '--in', garden, '--pdf', file],
    ]) {
      rmSync(file, { force: true });
      const run = cli.run(args);
      expect([args, run.status, run.stderr]).toEqual([args, 0, expect.stringContaining(file)]);
      isPdf(file);
    }
  });
  it('64 when no plant or several are named', () => {
    expect(cli.run(['plants', 'dogw', '--pdf', join(cli.folder, 'none.pdf')]).status).toBe(64);
  });
});

describe('sorrel plants', () => {
  it('knows plants that have a range for pots alone, and says what that is worth', () => {
    const run = cli.run(['plants', 'million bells']);
    expect(run.stdout).toContain('pots 5.4 to 6.2');
    expect(run.stdout).toContain('Neither is a target for a bed');
    expect(JSON.parse(cli.run(['plants', 'yarrow', '--json']).stdout)[0]).toMatchObject({ foundLow: 6, foundHigh: 8 });
  });
});

describe('sorrel weeds', () => {
  it('says how little weeds tell, and that one should test', () => {
    const run = cli.run(['weeds', 'dandelion']);
    expect(run.status).toBe(0);
    expect(run.stdout).toContain('Test first');
  });
  it('1 when a weed is unknown, 2 when all are, 64 for none', () => {
    expect(cli.run(['weeds', 'dandelion', 'zzz']).status).toBe(1);
    expect(cli.run(['weeds', 'zzz']).status).toBe(2);
    expect(cli.run(['weeds']).status).toBe(64);
  });
});

describe('diseases and nutrients in a garden', () => {
  it('a disease that is present moves the target of the plan and says what that is worth', () => {
    const sour = { ...bed, tests: [{ ...bed.tests[0], ph: { value: 6.4, in: 'water-1:1' } }] };
    const text = cli.run(['plan', '-'], json(sour)).stdout.replace(/\s+/g, ' ');
    expect(text).toContain('7.2 to 7.5');
    expect(text).toContain('Clubroot is held down above pH 7.2');
  });
  it('an unknown disease or extractant is explained, and the rest is served', () => {
    const run = cli.run(['check', '-'], json({ ...bed, diseases: ['clubrot'] }));
    expect(run.status).toBe(1);
    expect(run.stdout + run.stderr).toContain('clubroot');
    const tests = [{ ...bed.tests[0], nutrients: [{ nutrient: 'P', by: 'magic', level: '3 ppm' }] }];
    expect(cli.run(['check', '-'], json({ ...bed, tests })).status).toBe(1);
  });
});
