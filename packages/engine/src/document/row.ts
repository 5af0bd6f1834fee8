import type { Problem } from '../derivation/problem.ts';
import { checkSoilTest } from '../evidence/check-soil-test.ts';
import type { SoilTest, TextureClass } from '../evidence/soil-test.ts';
import type { Place } from '../plan/place.ts';
import type { Texture } from '../soil/soil.ts';
import { textureOf } from '../soil/texture-of.ts';
import { unknownField } from './field-problems.ts';
import { particles } from './particles.ts';
import { plainlySound } from './quick-check.ts';
import { problem } from './report.ts';
import { RowCells } from './row-cells.ts';
import { type Column, columns, rowColumns } from './row-columns.ts';
import { type Draft, type RowDefaults, startDraft } from './row-draft.ts';
import { usualDepth } from './usual-depth.ts';

/** A single target pH is taken as a range this wide to either side (SORREL): the smallest change two tests can tell, doubled. */
const TARGET_MARGIN = 0.5;

/** Columns of figures that the full check knows by another name. */
const COLUMN_OF: Readonly<Record<string, string>> = {
  'ph.value': 'ph',
  'buffer.value': 'buffer_ph',
  'buffer.method': 'buffer',
  organicMatter: 'om',
  organicCarbon: 'oc',
  baseSaturation: 'base_saturation',
};

export type RowResult =
  | { readonly ok: true; readonly place: Place }
  | { readonly ok: false; readonly problems: readonly Problem[] };

export interface RowReader {
  /** What is wrong with the first line: columns nobody knows, with the nearest known one. They are passed over. */
  readonly problems: readonly Problem[];
  /** One row of cells, in the order of the first line. `row` counts from 1 and names the place when no cell does. */
  read(cells: readonly string[], row: number): RowResult;
}

/** Most cells have no blank at either end; asking is cheaper than trimming. */
const isTrim = (cell: string): boolean => {
  const first = cell.charCodeAt(0);
  const last = cell.charCodeAt(cell.length - 1);
  return first > 32 && first < 127 && last > 32 && last < 127;
};

const LONGEST_NAME = 80;
const counted = (cells: number): string => (cells === 1 ? '1 cell' : `${cells} cells`);

const named = new Map<TextureClass, Texture | undefined>();
function classTexture(name: TextureClass): Texture | undefined {
  if (!named.has(name)) named.set(name, textureOf({ texture: name }));
  return named.get(name);
}

/**
 * Reads rows of a table of soil tests, one place and one test a row. A row with anything wrong in it gives no place: it is
 * reported with place, field, value and fix, and the other rows are untouched by it.
 *
 * @param header names of the columns, as in `docs/soil-test-table.md`; capitals, spaces and hyphens do not matter
 * @param defaults today, and the region when the table has no such column
 */
export function rowReader(header: readonly string[], defaults: RowDefaults): RowReader {
  const problems: Problem[] = [];
  const order: (Column | undefined)[] = header.map((title) => {
    const name = title
      .trim()
      .toLowerCase()
      .replace(/[\s-]+/g, '_');
    const column = Object.hasOwn(columns, name) ? columns[name] : undefined;
    if (column === undefined && name !== '')
      problems.push(unknownField(title.trim(), undefined, rowColumns, [], undefined));
    return column;
  });
  const nameAt = header.findIndex((title) => title.trim().toLowerCase() === 'place');
  const cells = new RowCells();
  return {
    problems,
    read(row, number) {
      const name = row[nameAt]?.trim();
      // A name as long as a whole line is a quote that was never closed.
      cells.start(name === undefined || name === '' || name.length > LONGEST_NAME ? `row ${number}` : name);
      if (row.length !== header.length)
        cells.fail('document.row-width', 'row', row.length, {
          found: counted(row.length),
          wanted: counted(header.length),
        });
      else {
        const draft = startDraft(number, defaults);
        for (let i = 0; i < row.length; i++) {
          const column = order[i];
          const cell = row[i];
          if (column === undefined || cell === undefined || cell === '') continue;
          const trimmed = isTrim(cell) ? cell : cell.trim();
          if (trimmed !== '') column(trimmed, draft, cells);
        }
        finish(draft, cells, defaults);
        // An entry that is there and empty says the same as one that is not.
        if (cells.problems.length === 0) return { ok: true, place: draft.place as Place };
      }
      return { ok: false, problems: cells.problems };
    },
  };
}

/** Puts together what only the whole row tells, and checks that the test can be real. */
function finish(draft: Draft, cells: RowCells, defaults: RowDefaults): void {
  const { place, test } = draft;
  place.name = cells.place;
  const container = place.kind === 'container';
  if (container) {
    place.situation = 'container';
    if (place.medium === 'mineral') place.medium = 'soilless';
  }
  const usual = usualDepth(container, place.situation);
  place.depth = draft.depth ?? usual;
  test.depth = draft.testDepth ?? (container ? place.depth : usual);
  if (container) {
    place.volume ??= draft.areaGiven ? place.area * place.depth : 0.01;
    if (!draft.areaGiven) place.area = place.volume / place.depth;
  }
  if (draft.ph === undefined) {
    if (cells.problems.length === 0) cells.problems.push(missing('ph', '5.4', cells));
  } else
    test.ph = {
      value: draft.ph,
      method: draft.phMethod ?? (place.medium === 'soilless' ? 'media-extract' : 'unstated'),
    };
  if (draft.buffer !== undefined && draft.bufferMethod !== undefined)
    test.buffer = { value: draft.buffer, method: draft.bufferMethod };
  else if (draft.buffer !== undefined) cells.problems.push(missing('buffer', 'sikora or smp', cells));
  if (draft.alkalinity !== undefined) place.water = { alkalinity: draft.alkalinity };
  ground(draft, cells);
  printedRate(draft, cells);
  target(draft, cells);
  if (cells.problems.length === 0 && !plainlySound(test as SoilTest, defaults.today)) {
    const faults = checkSoilTest(test as SoilTest, cells.place, 'test', defaults.today);
    for (const each of faults) {
      const field = each.field.replace(/^test\./, '');
      cells.problems.push({ ...each, field: COLUMN_OF[field] ?? field });
    }
  }
}

const missing = (field: string, example: string, cells: RowCells): Problem =>
  problem('document.missing', { place: cells.place, field }, undefined, { example }, 'document.missing-example.fix');

function ground(draft: Draft, cells: RowCells): void {
  const { place, test, sand, silt, clay } = draft;
  if (sand !== undefined || silt !== undefined || clay !== undefined) {
    const parts = particles({ sand, silt, clay }, [], { place: cells.place, problems: cells.problems });
    if (parts !== undefined) Object.assign(test, parts);
  } else if (draft.texture !== undefined) {
    test.texture = draft.texture;
    const texture = classTexture(draft.texture);
    if (texture !== undefined) place.texture = texture;
  }
  if (test.organicMatter !== undefined) place.organicMatter = test.organicMatter;
}

function printedRate(draft: Draft, cells: RowCells): void {
  const { printedRate: rate, printedDepth: depth, printedTarget: targetPh } = draft;
  if (rate === undefined) return;
  if (depth === undefined) cells.problems.push(missing('printed_depth', '7 in', cells));
  if (targetPh === undefined) cells.problems.push(missing('printed_target', '6.5', cells));
  if (depth !== undefined && targetPh !== undefined)
    draft.test.printedRate = { rate, depth, targetPh, neutralisingValue: draft.printedCce ?? 1 };
}

function target(draft: Draft, cells: RowCells): void {
  const { target: aim, targetLow, targetHigh } = draft;
  if (aim === undefined && targetLow === undefined && targetHigh === undefined) return;
  const low = targetLow ?? (aim ?? targetHigh ?? 0) - TARGET_MARGIN;
  const high = targetHigh ?? (aim ?? low) + TARGET_MARGIN;
  if (low >= high || (aim !== undefined && (aim < low || aim > high)))
    cells.fail('document.target-order', 'target', `${low} to ${high}`, { low, high });
  else draft.place.target = aim === undefined ? { low, high } : { low, high, aim };
}
