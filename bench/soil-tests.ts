import { closeSync, openSync, writeSync } from 'node:fs';
import { plants } from '@sorrel/almanac/plants';

export const header =
  'place,date,by,laboratory,region,kind,situation,area,depth,cores,texture,sand,silt,clay,om,ph,ph_method,buffer_ph,' +
  'buffer,acidity,cec,base_saturation,calcium,magnesium,potassium,acid_fizz,vinegar_fizz,printed_rate,printed_depth,' +
  'printed_target,plants,target';
const columns = header.split(',');

/** A stream of numbers from 0 to 1 that a seed fixes (mulberry32, a public-domain generator). */
export function chance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

const textures = 'sand;loamy sand;sandy loam;loam;silt loam;sandy clay loam;clay loam;silty clay loam;clay'.split(';');
const regions = ['Oregon', 'Pennsylvania', 'North Carolina', 'Georgia', 'Ohio', 'Missouri', ''];
/** Buffers and the readings a real soil can give with each. */
const buffers: readonly (readonly [string, number, number])[] = [
  ['sikora', 5.5, 7.4],
  ['smp', 5.2, 7.2],
  ['mehlich', 5.3, 6.5],
  ['adams-evans', 7, 7.9],
  ['modified-woodruff', 5.6, 6.9],
];
const areas = ['32 sq ft', '3 m2', '100 sq ft', '12 m2', '1000 ft2', '0.5 acre'];
const depths = ['6 in', '15 cm', '20 cm', '8 in', '7 in'];
const home = ['slurry-meter', 'colour-kit', 'strip', 'probe'];

/** One row of the table, as cells by column. About one in fifty has something wrong with it. */
function test(number: number, next: () => number): Record<string, string> {
  const pick = <T>(from: readonly T[]): T => from[Math.floor(next() * from.length)] as T;
  const between = (low: number, high: number, digits: number) => (low + next() * (high - low)).toFixed(digits);
  const ph = 4.2 + 4 * next() ** 1.4;
  const laboratory = next() < 0.75;
  const row: Record<string, string> = {
    place: `Bed ${number}`,
    date: `2026-0${1 + Math.floor(next() * 9)}-1${Math.floor(next() * 10)}`,
    by: laboratory ? 'laboratory' : pick(home),
    laboratory: laboratory ? `Invented laboratory ${pick(['A', 'B', 'C'])}` : '',
    region: pick(regions),
    kind: pick(['bed', 'bed', 'bed', 'plot']),
    situation: pick(['open ground', 'open ground', 'around plants', 'lawn']),
    area: pick(areas),
    depth: pick(depths),
    cores: String(4 + Math.floor(next() * 15)),
    ph: ph.toFixed(laboratory ? 2 : 1),
    ph_method: pick(['water-1:1', 'water-1:2', 'cacl2-0.01M', '']),
    om: next() < 0.6 ? between(1, 9, 1) : '',
    plants: Array.from({ length: 1 + Math.floor(next() * 3) }, () => pick(plants).name).join('; '),
    target: next() < 0.1 ? between(5.5, 6.8, 1) : '',
  };
  if (next() < 0.7) row.texture = pick(textures);
  else if (next() < 0.5) {
    const clay = Math.round(5 + 45 * next());
    const sand = Math.round((100 - clay) * next());
    Object.assign(row, { sand: String(sand), silt: String(100 - clay - sand), clay: String(clay) });
  }
  if (laboratory) {
    if (next() < 0.6) {
      const [buffer, low, high] = pick(buffers);
      Object.assign(row, { buffer, buffer_ph: between(low, high, 2) });
    }
    if (next() < 0.3) row.acidity = between(0.5, 15, 1);
    if (next() < 0.4) Object.assign(row, { cec: between(4, 30, 1), base_saturation: between(25, 95, 0) });
    if (next() < 0.5)
      Object.assign(row, {
        calcium: between(200, 4000, 0),
        magnesium: between(30, 600, 0),
        potassium: between(40, 400, 0),
      });
    if (next() < 0.2 && ph < 6.5)
      Object.assign(row, {
        printed_rate: `${between(20, 120, 0)} lb/1000 sq ft`,
        printed_depth: '6 in',
        printed_target: '6.5',
      });
  }
  if (ph > 7.2)
    row[laboratory ? 'acid_fizz' : 'vinegar_fizz'] = laboratory
      ? pick(['none', 'slight', 'strong'])
      : pick(['silent', 'mild', 'vigorous']);
  if (next() < 0.02)
    Object.assign(
      row,
      pick([
        { ph: '15' },
        { ph: 'sour' },
        { ph: '' },
        { texture: 'clay lome' },
        { depth: '6 furlongs' },
        { plants: 'moon beans' },
      ]),
    );
  return row;
}

const cell = (value: string) => (/[",\n]/.test(value) ? `"${value.replaceAll('"', '""')}"` : value);

/** The lines of a table of `count` soil tests, header first, each with its line end. */
export function* testLines(count: number, seed = 1): Generator<string> {
  const next = chance(seed);
  yield `${header}\n`;
  for (let number = 1; number <= count; number++) {
    const row = test(number, next);
    yield `${columns.map((column) => cell(row[column] ?? '')).join(',')}\n`;
  }
}

/** Writes such a table to a file, a megabyte at a time. */
export function writeTests(file: string, count: number, seed = 1): void {
  const out = openSync(file, 'w');
  let block = '';
  for (const line of testLines(count, seed)) {
    block += line;
    if (block.length < 1_000_000) continue;
    writeSync(out, block);
    block = '';
  }
  writeSync(out, block);
  closeSync(out);
}
