import { closeSync, openSync, writeSync } from 'node:fs';
import { chance } from './soil-tests.ts';

/** Columns as a large laboratory sends them; most are not needed for the pH. */
export const labHeader = [
  'Lab Number',
  'Sample ID',
  'Date Sampled',
  'Date Received',
  'pH (1:1 water)',
  'Buffer pH (Sikora)',
  'Organic Matter (%)',
  'Nitrate-N (ppm)',
  'Olsen P (ppm)',
  'Mehlich-3 P (ppm)',
  'K (ppm)',
  'Ca (ppm)',
  'Mg (ppm)',
  'Na (ppm)',
  'S (ppm)',
  'Zn (ppm)',
  'Fe (ppm)',
  'Mn (ppm)',
  'Cu (ppm)',
  'B (ppm)',
  'Soluble Salts (mmho/cm)',
  'CEC (meq/100g)',
  '% K',
  '% Mg',
  '% Ca',
  '% H',
  'Texture',
  'Depth',
] as const;

const textures = ['SL', 'Loam', 'Silt Loam', 'CL', 'Sandy Loam', 'LS', 'Clay', 'SiL', ''];

/** One row as laboratories send them: some cells empty, some below what can be told; one in fifty has something wrong. */
function row(number: number, next: () => number): string {
  const pick = <T>(from: readonly T[]): T => from[Math.floor(next() * from.length)] as T;
  const between = (low: number, high: number, digits: number) => (low + next() * (high - low)).toFixed(digits);
  const trace = (low: number, high: number, digits: number) => (next() < 0.05 ? `<${low}` : between(low, high, digits));
  const ph = 4.4 + 3.6 * next() ** 1.3;
  const day = 1 + Math.floor(next() * 27);
  const month = 3 + Math.floor(next() * 7);
  const wrong = next() < 0.02 ? pick(['ph', 'name', 'lost', 'text']) : '';
  const cells = [
    `F${26_000_000 + number}`,
    wrong === 'name' ? 'Average' : `Bed ${number}`,
    `${month}/${day}/2026`,
    `${month}/${day + 1}/2026`,
    wrong === 'ph' ? pick(['ND', '45', 'pending', '']) : ph.toFixed(1),
    ph < 6.5 && next() < 0.8 ? between(5.9, 7.3, 1) : '',
    between(1, 8, 1),
    between(1, 60, 0),
    trace(2, 120, 0),
    trace(2, 200, 0),
    between(40, 420, 0),
    between(200, 3900, 0),
    between(30, 620, 0),
    trace(5, 90, 0),
    trace(1, 40, 0),
    trace(0.1, 12, 1),
    between(4, 180, 0),
    between(1, 60, 0),
    trace(0.1, 6, 1),
    trace(0.1, 3, 1),
    between(0.1, 1.6, 2),
    wrong === 'text' ? '#VALUE!' : between(4, 30, 1),
    between(1, 8, 1),
    between(6, 30, 1),
    between(30, 80, 1),
    between(0, 40, 1),
    pick(textures),
    pick(['6 in', '6 in', '6 in', '8 in', '0-6 in']),
  ];
  if (wrong === 'lost') cells.splice(7, 1);
  return `${cells.join(',')}\r\n`;
}

/** The lines of a laboratory's file of so many samples, titles first. */
export function* labLines(count: number, seed = 1): Generator<string> {
  const next = chance(seed);
  yield `${labHeader.join(',')}\r\n`;
  for (let number = 1; number <= count; number++) yield row(number, next);
}

/** Writes such a file, a megabyte at a time. */
export function writeLabFile(file: string, count: number, seed = 1): void {
  const out = openSync(file, 'w');
  let block = '';
  for (const line of labLines(count, seed)) {
    block += line;
    if (block.length < 1_000_000) continue;
    writeSync(out, block);
    block = '';
  }
  writeSync(out, block);
  closeSync(out);
}
