import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Built, built } from '../testing/built.ts';
import { textWidth } from './layout.ts';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const garden = `${root}demo/sour-ground-heavy-rain.yaml`;
const demo = `${root}demo/wishes/sour-ground-heavy-rain.yaml`;

let cli: Built;
beforeAll(async () => {
  cli = await built();
});
afterAll(() => cli.remove());

let files = 0;
const wishes = (document: unknown): string => {
  const file = join(cli.folder, `wishes-${files++}.json`);
  writeFileSync(file, JSON.stringify(document));
  return file;
};

describe('sorrel arrange', () => {
  it('places the wishes of the demo, proven, within the page, and says why', () => {
    const { stdout, stderr, status } = cli.run(['arrange', garden, '--wishes', demo]);
    expect(stderr).toBe('');
    expect(status).toBe(0);
    expect(stdout).toMatch(/proved, not\s+guessed/);
    expect(stdout).toMatch(/Carrot, 12 sq ft \(fixed by you\)/);
    expect(stdout).toMatch(/Blueberry, highbush, 60 sq ft \(stays\)/);
    expect(stdout).toMatch(/Keep these apart from the acid-lovers/);
    expect(stdout).not.toMatch(/[{}]|undefined|NaN/);
    for (const line of stdout.split('\n')) expect(textWidth(line)).toBeLessThanOrEqual(80);
  });

  it('gives a machine the same figures, with the sentences', () => {
    const { stdout, status } = cli.run(['arrange', garden, '--wishes', demo, '--json', '--why']);
    expect(status).toBe(0);
    const found = JSON.parse(stdout);
    expect(found.proven).toBe(true);
    expect(found.runnerUp.saved.currency).toBeGreaterThanOrEqual(0);
    expect(found.greedy.currency).toBeGreaterThanOrEqual(found.figures.currency - 1e-6);
    expect(found.derivation.steps.at(-1).value).toBeCloseTo(found.figures.currency, 6);
    expect(found.messages[0].text).toMatch(/proved/);
  });

  it('writes the handout as a PDF', () => {
    const file = join(cli.folder, 'handout.pdf');
    const { status, stderr } = cli.run(['arrange', garden, '--wishes', demo, '--pdf', file]);
    expect([status, stderr]).toEqual([0, `The handout is in ${file}.\n`]);
    expect(readFileSync(file).subarray(0, 5).toString('latin1')).toBe('%PDF-');
  });

  it('serves what can be used, names what cannot, and ends with 1', () => {
    const file = wishes({
      wishes: [
        { plant: 'cabbage', area: '20 sq ft' },
        { plant: 'cabage', area: '3 m2' },
      ],
    });
    const { stdout, stderr, status } = cli.run(['arrange', garden, '--wishes', file]);
    expect(status).toBe(1);
    expect(stderr).toMatch(/wishes\[1\]\.plant/);
    expect(stdout).toMatch(/Cabbage, 20 sq ft/);
  });

  it('says which wish cannot be met, and why', () => {
    const file = wishes({ wishes: [{ plant: 'cabbage', area: '1 ha' }] });
    const { stdout, status } = cli.run(['arrange', garden, '--wishes', file, '--units', 'metric']);
    expect(status).toBe(0);
    expect(stdout).toMatch(/Wishes without a place[\s\S]*has no place/);
  });

  it('asks for wishes, and ends with 2 when none can be used', () => {
    expect(cli.run(['arrange', garden]).status).toBe(64);
    expect(cli.run(['arrange', garden, '--wishes', demo, '--seconds', 'soon']).status).toBe(64);
    const none = cli.run(['arrange', garden, '--wishes', wishes({ wishes: [] })]);
    expect(none.status).toBe(2);
    expect(none.stderr).toMatch(/no wish/);
  });
});
