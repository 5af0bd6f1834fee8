import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { accountReport, comparisonReport, forecastReport, learnedReport } from '@sorrel/engine/document';
import { DOMParser, onErrorStopParsing } from '@xmldom/xmldom';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Built, built } from '../testing/built.ts';
import { textWidth } from './layout.ts';
import { progress } from './progress.ts';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const demos = readdirSync(`${root}demo`)
  .filter((file) => file.endsWith('.yaml'))
  .map((file) => `${root}demo/${file}`);
const sour = demos.find((file) => file.includes('sour')) ?? '';
const bed = 'Long vegetable bed';

let cli: Built;
beforeAll(async () => {
  cli = await built();
});
afterAll(() => cli.remove());

const lab = { date: '2026-09-14', by: 'laboratory', ph: { value: 5, in: 'water-1:1' } };
const one = {
  name: 'Bed',
  size: '4 x 8 ft',
  soil: { texture: 'loam' },
  plants: ['tomato'],
  tests: [{ ...lab, buffer: { value: 6.2, kind: 'sikora' } }],
};
const json = (...places: unknown[]) => JSON.stringify({ garden: 'Test', asOf: '2026-10-12', places });
const schemas = { forecast: forecastReport, account: accountReport, learned: learnedReport, compare: comparisonReport };
const commands = Object.keys(schemas) as (keyof typeof schemas)[];

describe.each(commands)('sorrel %s', (command) => {
  it('reads well at 80 columns for every demo garden', () => {
    for (const demo of demos) {
      const run = cli.run([command, demo]);
      expect(run.status, run.stderr).toBe(0);
      expect(run.stderr).toBe('');
      for (const line of run.stdout.split('\n')) expect(textWidth(line), line).toBeLessThanOrEqual(80);
      // biome-ignore lint/suspicious/noControlCharactersInRegex: no escape sequence may be printed
      expect(run.stdout).not.toMatch(/\u001b|\{\w+\}|undefined|NaN/);
    }
  });
  it('is plain ASCII when asked', () => {
    const run = cli.run([command, sour, '--ascii']);
    expect(run.stdout).toMatch(/^[\x20-\x7e\n]*$/);
    expect(run.stdout).toContain('Squash and corn plot');
  });
  it('prints JSON its published schema takes', () => {
    const report = JSON.parse(cli.run([command, sour, '--json']).stdout);
    expect(schemas[command].safeParse(report).error).toBeUndefined();
    const schema = JSON.parse(cli.run(['schema', command]).stdout);
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
  });
  it('shows one place when it is named, and says when there is none', () => {
    const run = cli.run([command, sour, '--place', bed]);
    expect(run.stdout).toContain(bed);
    expect(run.stdout).not.toContain('Potato bed');
    const none = cli.run([command, sour, '--place', 'Nowhere']);
    expect(none.status).toBe(2);
    expect(none.stderr).toContain(bed);
  });
  it('ends with 1 when an entry was left out, with 2 when nothing can be said, with 64 for a wrong option', () => {
    const partly = cli.run([command, '-'], json(one, { ...one, name: 'Deep', depth: '-6 in' }));
    expect(partly.status).toBe(1);
    expect(partly.stderr).toMatch(/Deep, depth/);
    expect(cli.run([command, '-'], '').status).toBe(2);
    expect(cli.run([command, '--furlongs', sour]).status).toBe(64);
    expect(cli.run([command]).status).toBe(64);
    expect(cli.run([command, '--help']).stdout).toContain(`sorrel ${command}`);
  });
});

describe('the forecast', () => {
  it('cannot be made without a reading, and says what to do', () => {
    const run = cli.run(['forecast', '-'], json({ ...one, tests: [] }));
    expect(run.status).toBe(2);
    expect(run.stdout).toMatch(/soil test\s+first/);
  });
  it('draws tests, dressings and bands, and lists the dressings', () => {
    const { stdout } = cli.run(['forecast', sour, '--place', bed]);
    const picture = stdout.slice(0, stdout.indexOf('most likely'));
    expect(picture.match(/●/g)).toHaveLength(3);
    for (const sign of ['░', '▒', '▓', '━', '▲1', '▲3', '◇']) expect(picture, sign).toContain(sign);
    expect(stdout).toMatch(/only if a retest asks/);
    expect(stdout).toMatch(/Test again about \d+ \w+ 20\d\d/);
  });
  it('with nothing put on only drifts', () => {
    const report = (args: string[]) =>
      forecastReport.parse(JSON.parse(cli.run(['forecast', '-', '--json', ...args], json(one)).stdout)).places[0];
    const [limed, left] = [report([]), report(['--without'])];
    expect(limed?.forecast?.median.at(-1) ?? 0).toBeGreaterThan((left?.forecast?.median.at(-1) ?? 9) + 0.3);
    expect(Math.abs((left?.forecast?.median.at(-1) ?? 0) - 5)).toBeLessThan(0.2);
    expect(left?.forecast?.marks).toEqual([]);
  });
  it('looks as far ahead as asked', () => {
    const dates = (years: string) =>
      forecastReport.parse(JSON.parse(cli.run(['forecast', '-', '--json', '--years', years], json(one)).stdout))
        .places[0]?.forecast?.dates ?? [];
    expect(dates('1')).toHaveLength(53);
    expect(dates('5').at(-1)).toMatch(/^2031-10/);
    for (const years of ['0', '6', 'many', ''])
      expect(cli.run(['forecast', '-', '--years', years], json(one)).status, years).toBe(64);
  });
  it('is drawn as well-formed SVG of one place', () => {
    const file = join(cli.folder, 'bed.svg');
    const run = cli.run(['forecast', sour, '--place', bed, '--svg', file]);
    expect(run.status).toBe(0);
    const svg = new DOMParser({ onError: onErrorStopParsing }).parseFromString(
      readFileSync(file, 'utf8'),
      'image/svg+xml',
    );
    expect(svg.documentElement?.localName).toBe('svg');
    expect(svg.getElementsByTagName('title')[0]?.textContent).toContain(bed);
    const many = cli.run(['forecast', sour, '--svg', file]);
    expect(many.status).toBe(64);
    expect(many.stderr).toContain('--place');
    expect(cli.run(['forecast', sour, '--place', bed, '--svg', join(cli.folder, 'no', 'where.svg')]).status).toBe(2);
  });
  it('shows its working', () => {
    const run = cli.run(['forecast', '-', '--why'], json(one));
    expect(run.stdout).toContain('Base content of the layer at the start');
    expect(run.stdout).toMatch(/\n {2}PHREEQC: /);
    const report = JSON.parse(cli.run(['forecast', '-', '--why', '--json'], json(one)).stdout);
    expect(report.places[0].derivation.steps.length).toBeGreaterThan(2);
  });
});

describe('the account', () => {
  it('adds up, year by year', () => {
    const report = accountReport.parse(JSON.parse(cli.run(['account', sour, '--json']).stdout));
    for (const { account } of report.places)
      for (const { entries, change } of account?.years ?? [])
        expect(Object.values(entries).reduce((sum, each) => sum + each, 0)).toBeCloseTo(change, 9);
  });
  it('counts the feeds, the harvest and the compost of the document', () => {
    const years = accountReport.parse(JSON.parse(cli.run(['account', sour, '--json']).stdout)).places[0]?.account
      ?.years;
    const first = years?.[0]?.entries ?? {};
    expect(first.fertilizer).toBeLessThan(0);
    expect(first.crops).toBeLessThan(0);
    expect(first.compost).toBeGreaterThan(0);
  });
});

describe('what was learned', () => {
  it('is told with how sure it is, and stands in the plan too', () => {
    const { stdout } = cli.run(['learned', sour, '--place', bed]);
    expect(stdout).toMatch(/Your soil resists \d+\s?%/);
    expect(stdout).toMatch(/8 times in 10 between/);
    expect(cli.run(['plan', sour, '--place', bed]).stdout).toContain('What this place has taught');
  });
  it('points out a test that does not fit', () => {
    const tests = ['2022', '2023', '2024', '2025'].map((year, index) => ({
      ...lab,
      date: `${year}-09-14`,
      depth: '6 in',
      cores: 15,
      ph: { value: index === 2 ? 7.6 : 5.4, in: 'water-1:1' },
    }));
    const run = cli.run(
      ['learned', '-'],
      json({
        ...one,
        tests: [
          ...one.tests.map((each) => ({ ...each, depth: '6 in', cores: 15, ph: { value: 5.4, in: 'water-1:1' } })),
          ...tests,
        ],
      }),
    );
    expect(run.stdout).toMatch(/2024-09-14 reads 7\.6/);
    expect(run.stdout).toMatch(/does not fit/);
  });
});

describe('the comparison', () => {
  it('sets doing nothing beside the plan', () => {
    const { ways } = comparisonReport.parse(JSON.parse(cli.run(['compare', sour, '--json']).stdout)).places[0] ?? {
      ways: [],
    };
    const way = (kind: string) => ways.find((each) => each.kind === kind);
    expect(way('the plan')?.insideAfterYear ?? 0).toBeGreaterThan(way('do nothing')?.insideAfterYear ?? 1);
    expect(way('do nothing')?.cost).toBe(0);
    expect(way('all at once')).toMatchObject({ open: false });
    expect(way('all at once')?.notes).not.toEqual([]);
  });
});

describe('the plan', () => {
  it('is held to the forecast unless asked not to', () => {
    const hard = {
      ...one,
      water: { alkalinity: '4 meq/L', perYear: '600 mm' },
      target: { low: 5.8, high: 6.2 },
      tests: [{ ...one.tests[0], ph: { value: 5.3, in: 'water-1:1' } }],
    };
    const mass = (...args: string[]) =>
      JSON.parse(cli.run(['plan', '-', '--json', ...args], json(hard)).stdout).places[0].plan.applications[0].mass;
    expect(mass()).toBeLessThan(mass('--no-forecast'));
    expect(cli.run(['plan', '-'], json(hard)).stdout).toMatch(/because\s+the\s+forecast\s+gave/);
  });
  it('says what must be known of a reading under the pH, not among the questions', () => {
    const { stdout } = cli.run(['plan', '-'], json(one));
    const under = stdout.slice(stdout.indexOf('pH now'), stdout.indexOf('Wanted'));
    expect(under).toContain('autumn test');
    expect(stdout.split('autumn test')).toHaveLength(2);
  });
  it('shows the working of the forecast too', () => {
    expect(cli.run(['plan', '-', '--why'], json(one)).stdout).toContain('Median pH of the ensemble');
    expect(cli.run(['plan', '-', '--why', '--no-forecast'], json(one)).stdout).not.toContain(
      'Median pH of the ensemble',
    );
  });
});

describe('progress', () => {
  const told = (isTTY: boolean, times: number[]) => {
    const said: string[] = [];
    const clock = [...times];
    const watch = progress(3, { isTTY, write: (text) => said.push(text) }, () => clock.shift() ?? 0);
    for (let done = 1; done < times.length; done++) watch.at(done);
    watch.end();
    return said.join('');
  };
  it('is said only to a terminal, only after a second, and is wiped', () => {
    expect(told(true, [0, 200, 1500, 2500])).toBe(`\r2 of 3 places\r3 of 3 places\r${' '.repeat(13)}\r`);
    expect(told(true, [0, 10, 20])).toBe('');
    expect(told(false, [0, 5000, 9000])).toBe('');
  });
});
