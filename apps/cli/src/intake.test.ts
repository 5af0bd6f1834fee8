import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Built, built } from '../testing/built.ts';

const corpus = new URL('../../../packages/intake/corpus/files/', import.meta.url).pathname;
let cli: Built;
beforeAll(async () => {
  cli = await built();
});
afterAll(() => cli.remove());

/** Over the size from which other threads are asked, with rows to mend, quotes and a line feed inside a cell. */
function large(rows: number): string {
  const filler = 'invented '.repeat(12);
  const lines = Array.from({ length: rows }, (_, i) => {
    const name = i % 50 === 7 ? `"Bed, ""the ${i}th""\nby the wall"` : `Bed ${i}`;
    const ph = i % 97 === 0 ? 'pending' : (4.4 + ((i * 7) % 34) / 10).toFixed(1);
    return `${name},9/${1 + (i % 30)}/2026,${ph},${i % 9 === 0 ? '<5' : 90 + i},${filler}`;
  });
  return `Sample ID,Date,pH (CaCl2),Mg ppm,Remarks\n${lines.join('\n')}\n`;
}

const at = (name: string) => join(cli.folder, name);
const intake = (...args: string[]) => cli.run(['intake', ...args, '--as-of', '2026-11-01']);

describe('sorrel intake', () => {
  it('shows what each column seems to be, and asks with the options that answer', () => {
    const run = intake(join(corpus, '48-buffers-asked.csv'));
    expect(run.status).toBe(1);
    expect(run.stdout).toContain('4 questions are open');
    expect(run.stdout).toContain('--answer "buffer=sikora"');
    expect(run.stdout).toContain('--answer "unit: CEC=meq/100 g"');
  });

  it('plans nothing while something is open', () => {
    const run = intake(join(corpus, '48-buffers-asked.csv'), '--plans', '-');
    expect(run.status).toBe(2);
    expect(run.stdout).toBe('');
    expect(run.stderr).toContain('Nothing was planned');
  });

  it('remembers the answers, plans the rows, and lists the others to be mended and read again', () => {
    const file = at('march.csv');
    writeFileSync(file, 'Sample ID;Date;pH;Buffer pH\nA;14/09/2026;5,4;6,3\nB;14/09/2026;5,O;6,5\nTotal;;2;\n');
    const sender = at('sender.json');
    const first = intake(
      file,
      '--answer',
      'ph-method=water-1:1',
      '--answer',
      'buffer=smp',
      '--sender',
      sender,
      '--name',
      'Invented',
      '--plans',
      '-',
      '--mend',
      at('mend.csv'),
    );
    expect(first.status).toBe(1);
    const plans = parse(first.stdout, { columns: true }) as Record<string, string>[];
    expect(plans.map(({ line, place, decision }) => [line, place, decision])).toEqual([['2', 'A', 'raise']]);
    expect(first.stderr).toContain('3 rows read: 1 planned, 2 to be looked at');
    expect(JSON.parse(readFileSync(sender, 'utf8'))).toMatchObject({ sender: 'Invented', decimal: 'comma' });

    const list = parse(readFileSync(at('mend.csv'), 'utf8')) as string[][];
    expect(list.map((row) => row[0])).toEqual(['sorrel line', '3', '4']);
    const mended = readFileSync(at('mend.csv'), 'utf8')
      .replace(',"5,O",', ',"5,0",')
      .split('\r\n')
      .slice(0, 2)
      .join('\r\n');
    expect(mended).toContain('"5,0"');
    writeFileSync(at('mended.csv'), mended);
    const second = intake(at('mended.csv'), '--sender', sender, '--plans', '-');
    expect(second.status).toBe(0);
    expect((parse(second.stdout, { columns: true }) as Record<string, string>[]).map(({ line }) => line)).toEqual([
      '3',
    ]);
  });

  it('reads workbooks, other encodings and what is piped in', () => {
    const workbook = intake(join(corpus, '62-workbook.xlsx'), '--plans', '-');
    expect([workbook.status, workbook.stdout.split('\r\n').length]).toEqual([0, 4]);
    const old = intake(join(corpus, '03-windows-1252.csv'), '--plans', '-');
    expect(old.stdout).toContain('Gemüsebeet – Süd “neu”');
    const piped = cli.run(['intake', '-', '--plans', '-'], 'Sample ID,pH (CaCl2)\nA,5.4\n');
    expect(piped.status).toBe(0);
    expect(piped.stdout).toContain('\r\n2,A,');
  });

  it('gives the same over several threads as over one', () => {
    const file = at('large.csv');
    writeFileSync(file, large(18_000));
    const one = intake(file, '--threads', '1', '--plans', at('one.csv'), '--mend', at('one-mend.csv'));
    const two = intake(file, '--threads', '2', '--plans', at('two.csv'), '--mend', at('two-mend.csv'));
    expect(one.status).toBe(1);
    expect(two.stderr).toBe(one.stderr);
    for (const [a, b] of [
      ['one.csv', 'two.csv'],
      ['one-mend.csv', 'two-mend.csv'],
    ] as const)
      expect(readFileSync(at(a), 'utf8') === readFileSync(at(b), 'utf8'), a).toBe(true);
    const lines = (name: string) => readFileSync(at(name), 'utf8').trimEnd().split('\r\n').length - 1;
    expect(lines('two.csv') + lines('two-mend.csv')).toBe(18_000);
  });

  it('says what an answer or a column may be', () => {
    const file = join(corpus, '48-buffers-asked.csv');
    expect(intake(file, '--answer', 'buffer=vinegar').stderr).toContain('sikora');
    expect(intake(file, '--answer', 'colour=red').status).toBe(64);
    expect(intake(file, '--column', 'Nothing=ph').stderr).toContain('there is no column');
    expect(intake(at('none.csv')).status).toBe(2);
    expect(intake(join(corpus, '67-workbook-cut-off.xlsx')).stderr).toContain('could not be opened');
  });
});
