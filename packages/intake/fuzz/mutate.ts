import fc from 'fast-check';

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

type Next = () => number;
const pick = <T>(next: Next, from: readonly T[]): T => from[Math.floor(next() * from.length)] as T;

/** A table as it is written: title lines above, header rows, rows, and the signs between. */
export interface Grammar {
  readonly delimiter: string;
  readonly decimal: '.' | ',';
  readonly lineEnd: string;
  readonly encoding: 'utf-8' | 'utf-8-mark' | 'utf-16le' | 'utf-16be' | 'windows-1252';
  readonly above: number;
  readonly twoLines: boolean;
  readonly columns: readonly Column[];
}

interface Column {
  readonly title: string;
  readonly group: string;
  readonly cell: (next: Next, decimal: string) => string;
}

const figure =
  (low: number, high: number, digits: number) =>
  (next: Next, decimal: string): string =>
    (low + next() * (high - low)).toFixed(digits).replace('.', decimal);

const known: readonly Column[] = [
  { title: 'Lab No', group: '', cell: (next) => `L${Math.floor(next() * 1e6)}` },
  { title: 'pH (H2O) 1:1', group: 'Reaction', cell: figure(4, 8.5, 1) },
  { title: 'pH', group: 'Reaction', cell: figure(4, 8.5, 2) },
  { title: 'pH (CaCl2)', group: 'Reaction', cell: figure(4, 8, 1) },
  { title: 'Buffer pH', group: 'Reaction', cell: figure(5.5, 7.2, 1) },
  { title: 'SMP', group: '', cell: figure(5.5, 7.2, 1) },
  { title: 'Lime index', group: '', cell: figure(56, 70, 0) },
  { title: 'OM %', group: 'Organic', cell: figure(1, 9, 1) },
  { title: 'Organic carbon (g/kg)', group: 'Organic', cell: figure(5, 50, 0) },
  { title: 'Ca mg/kg', group: 'Extractable', cell: figure(200, 4000, 0) },
  { title: 'Mg (lb/acre)', group: 'Extractable', cell: figure(60, 900, 1) },
  { title: 'K', group: 'Cations (cmol/kg)', cell: figure(0.1, 2, 3) },
  { title: 'P ppm', group: '', cell: figure(2, 200, 0) },
  { title: 'CEC', group: '', cell: figure(4, 30, 1) },
  { title: 'EC µS/cm', group: '', cell: figure(50, 900, 0) },
  { title: 'Date sampled', group: '', cell: () => '' },
  { title: 'Texture', group: '', cell: (next) => pick(next, ['SL', 'Loam', 'silty clay', 'CL', 'heavy']) },
  { title: 'Depth', group: '', cell: (next) => pick(next, ['0-15 cm', '6 in', '0-10', '15 cm', '15-30 cm']) },
  { title: 'Crop', group: '', cell: (next) => pick(next, ['Tomato', 'Carrot', 'Blueberry', 'moon beans']) },
  { title: 'Lime rec (t/ha)', group: '', cell: figure(0, 6, 1) },
  { title: 'Bemerkung', group: '', cell: (next) => pick(next, ['', 'schön', 'né', 'a "b"']) },
];

const two = (value: number): string => String(value).padStart(2, '0');
const days: readonly ((d: number, m: number) => string)[] = [
  (d, m) => `${two(d)}/${two(m)}/2026`,
  (d, m) => `${m}/${d}/26`,
  (d, m) => `2026-${two(m)}-${two(d)}`,
  (d, m) => `${d}.${m}.25`,
  (d) => `${d}-Sep-2026`,
  (d) => String(46250 + d),
];

/** Days of one form, with now and then one of another. */
const dayCell = (usual: (d: number, m: number) => string) => (next: Next) =>
  (next() < 0.03 ? pick(next, days) : usual)(1 + Math.floor(next() * 28), 1 + Math.floor(next() * 9));

/** One way of writing a table. */
export function grammarOf(next: Next): Grammar {
  const decimal = pick(next, ['.', '.', ','] as const);
  const ph = known[1 + Math.floor(next() * 3)] as Column;
  const day = pick(next, days);
  const rest = known.filter((column) => column !== ph && next() < 0.5);
  const columns = [
    { title: 'Sample ID', group: '', cell: (n: Next) => `Beet ${Math.floor(n() * 1e4)}` },
    ph,
    ...rest.map((column) => (column.title === 'Date sampled' ? { ...column, cell: dayCell(day) } : column)),
  ];
  return {
    decimal,
    delimiter: decimal === ',' ? pick(next, [';', '\t', ',']) : pick(next, [',', ';', '\t', '|']),
    lineEnd: pick(next, ['\n', '\n', '\r\n', '\r\n', '\r']),
    encoding: pick(next, ['utf-8', 'utf-8', 'utf-8-mark', 'utf-16le', 'utf-16be', 'windows-1252'] as const),
    above: next() < 0.7 ? 0 : 1 + Math.floor(next() * 4),
    twoLines: next() < 0.3,
    columns,
  };
}

const ODD = [
  '',
  ' ',
  '-',
  '--',
  'ND',
  'n.d.',
  '<5',
  '< 0,05',
  '>100',
  '#VALUE!',
  '#REF!',
  'N/A',
  '1,250',
  '1.250',
  '1 250,5',
  '1e9',
  '-5',
  '0',
  '45',
  '5.4-5.8',
  '5.4 H',
  '62 ppm',
  '4.2 %',
  '6 in',
  'Average',
  'Total',
  'Sample ID',
  'pH',
  '"',
  '""',
  '"x',
  'x"y',
  '\u0000',
  '\ufffd',
  '\u00a0',
  '=1+1',
  '@x',
  "'5",
  '9'.repeat(400),
  'é'.repeat(90),
  ';',
  ',',
  '\t',
  '|',
  '\n',
  '\r',
  '2027-01-01',
  '31/02/2026',
  'NaN',
  'Infinity',
  '1e999',
  '0x10',
  '5,4,3',
  '５.４',
  '٥٫٤',
  'true',
  'null',
  '[object Object]',
  '__proto__',
  '{0}',
] as const;

const quoteIf = (cell: string, delimiter: string): string =>
  cell.includes(delimiter) || /["\n\r]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;

/** One row, as text without its end; sometimes with something wrong in it. */
export function rowText(grammar: Grammar, next: Next): string {
  const { columns, delimiter, decimal } = grammar;
  const cells = columns.map((column) => column.cell(next, decimal));
  const kind = next();
  if (kind < 0.25) cells[Math.floor(next() * cells.length)] = pick(next, ODD);
  if (kind < 0.05) cells[Math.floor(next() * cells.length)] = pick(next, ODD);
  if (kind > 0.25 && kind < 0.27) cells.splice(Math.floor(next() * cells.length), 1);
  if (kind > 0.27 && kind < 0.29) cells.splice(Math.floor(next() * cells.length), 0, pick(next, ODD));
  if (kind > 0.29 && kind < 0.3) return cells.map(() => '').join(delimiter);
  if (kind > 0.3 && kind < 0.305) return pick(next, ODD).replace(/[\r\n]/g, ' ');
  const raw = kind > 0.305 && kind < 0.32;
  let text = cells.map((cell) => (raw ? cell : quoteIf(cell, delimiter))).join(delimiter);
  if (kind > 0.32 && kind < 0.34) text = scrambled(text, next);
  return text;
}

/** A letter lost, doubled, swapped or put in anywhere. */
function scrambled(text: string, next: Next): string {
  const at = Math.floor(next() * text.length);
  const odd = pick(next, ['"', ';', ',', '\n', '\u0000', 'x', '9', ' ', '\t', "'"]);
  return pick(next, [
    text.slice(0, at) + text.slice(at + 1),
    text.slice(0, at) + odd + text.slice(at),
    text.slice(0, at) + text.slice(at, at + 1) + text.slice(at),
    text.slice(0, at),
  ]);
}

/** The lines over the rows. */
export function headText({ columns, delimiter, above, twoLines }: Grammar, next: Next): string[] {
  const lines = Array.from({ length: above }, () =>
    pick(next, ['Invented laboratory', '', 'Report 17; page 1', '12 Test Street, Nowhere']),
  );
  if (twoLines) {
    let last = '';
    lines.push(
      columns
        .map(({ group }) => {
          const shown = group === last ? '' : group;
          last = group;
          return quoteIf(shown, delimiter);
        })
        .join(delimiter),
    );
  }
  lines.push(
    columns
      .map(({ title, group }) => quoteIf(twoLines || !group.includes('(') ? title : `${title} ${group}`, delimiter))
      .join(delimiter),
  );
  return lines;
}

/** Text as bytes of one encoding; letters the encoding does not have become question marks. */
export function encoded(text: string, encoding: Grammar['encoding']): Uint8Array {
  if (encoding === 'utf-8') return new TextEncoder().encode(text);
  if (encoding === 'utf-8-mark') return new TextEncoder().encode(`\ufeff${text}`);
  if (encoding === 'windows-1252')
    return Uint8Array.from(text, (letter) => (letter.charCodeAt(0) < 256 ? letter.charCodeAt(0) : 63));
  const marked = `\ufeff${text}`;
  const bytes = new Uint8Array(marked.length * 2);
  const view = new DataView(bytes.buffer);
  for (let at = 0; at < marked.length; at++) view.setUint16(at * 2, marked.charCodeAt(at), encoding === 'utf-16le');
  return bytes;
}

/** Seeds of tables, for property tests. */
export const seeds = fc.integer({ min: 1, max: 2 ** 31 });
