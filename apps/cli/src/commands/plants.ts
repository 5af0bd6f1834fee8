import {
  findHalfKnownPlant,
  type HalfKnownPlantRow,
  halfKnownPlants,
  nearestHalfKnownPlants,
} from '@sorrel/almanac/half-known-plants';
import { findPlant, nearestPlants, type PlantRow, plants } from '@sorrel/almanac/plants';
import { exit, Stop } from '../exit.ts';
import { gardenFor } from '../garden-input.ts';
import { read, showing, todayOf, unitsOf } from '../options.ts';
import { paperOptions, writePaper } from '../paper.ts';
import { tableText } from '../table-text.ts';
import { words } from '../words.ts';

type AnyRow = PlantRow | HalfKnownPlantRow;

const text = { type: 'string' } as const;
const options = { ...showing, pdf: text, in: text } as const;

/** `sorrel plants [WORDS]`: the plants and the pH they want. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, positionals } = read(args, options, 'plants');
  const wanted = positionals.join(' ').trim();
  const found = matching(wanted);
  if (values.pdf !== undefined) await print(values.pdf, wanted, values);
  if (values.json) {
    process.stdout.write(`${JSON.stringify(found, null, 2)}\n`);
    return found.length === 0 ? exit.nothing : exit.fine;
  }
  if (found.length === 0) {
    const near = [...nearestPlants(wanted), ...nearestHalfKnownPlants(wanted, 1)].slice(0, 3);
    const names = near.map((row) => `"${row.name}"`);
    process.stderr.write(
      `${words.none(wanted)}${names.length === 0 ? '' : ` ${words.didYouMean(names.join(' or '))}`}\n`,
    );
    return exit.nothing;
  }
  const [name, range, key, sources] = words.plantColumns;
  const table = tableText(
    [{ title: name, flexible: true }, { title: range }, { title: key }, { title: sources }],
    found.map((row) => [row.name, rangeOf(row), row.key, sourcesOf(row)]),
  );
  const notes = [
    ...(found.some((row) => row.basis === 'memory') ? [words.memoryNote] : []),
    ...(found.some(isHalfKnown) ? [words.halfKnownNote] : []),
  ];
  process.stdout.write(`${table}\n${notes.map((note) => `\n${note}\n`).join('')}`);
  return exit.fine;
}

const isHalfKnown = (row: AnyRow): row is HalfKnownPlantRow => !('aim' in row);

function matching(wanted: string): readonly AnyRow[] {
  if (wanted === '') return [...plants, ...halfKnownPlants];
  const part = wanted.toLowerCase();
  const has = (texts: readonly string[]) => texts.some((each) => each.toLowerCase().includes(part));
  const named: AnyRow[] = [
    ...plants.filter((row) => has([row.name, row.botanical, row.group, row.reaction, ...row.also])),
    ...halfKnownPlants.filter((row) => has([row.name, row.botanical, row.group, ...row.also])),
  ];
  const exact = findPlant(wanted) ?? findHalfKnownPlant(wanted);
  return exact === undefined || named.includes(exact) ? named : [exact, ...named];
}

function rangeOf(row: AnyRow): string {
  if (!isHalfKnown(row)) return `${ends(row.low, row.high)}${row.basis === 'memory' ? words.memoryMark : ''}`;
  if (row.containerLow !== undefined && row.containerHigh !== undefined)
    return words.onlyPots(ends(row.containerLow, row.containerHigh));
  return words.onlyFound(
    row.foundLow === undefined ? words.upTo((row.foundHigh ?? 0).toFixed(1)) : ends(row.foundLow, row.foundHigh ?? 0),
  );
}

const ends = (low: number, high: number): string => `${low.toFixed(1)} to ${high.toFixed(1)}`;

const sourcesOf = (row: AnyRow): string =>
  row.sources.length > 2 ? `${row.sources.slice(0, 2).join(', ')} +${row.sources.length - 2}` : row.sources.join(', ');

/** Prints the page of the one plant named, with the places of a garden when one is given. */
async function print(
  file: string,
  wanted: string,
  values: { readonly in?: string; readonly units?: string },
): Promise<void> {
  const plant = findPlant(wanted) ?? findHalfKnownPlant(wanted);
  if (plant === undefined) throw new Stop(exit.usage, words.usage('plants', words.onePlant(wanted)));
  const { plantPage } = await import('@sorrel/print');
  const { planGarden } = await import('@sorrel/engine/plan');
  const { garden, system } =
    values.in === undefined
      ? { garden: await nowhere(), system: unitsOf(values.units, 'plants') ?? 'metric' }
      : await gardenFor({ units: values.units }, [values.in], 'plants').then(({ read: found, speaker }) => ({
          garden: found.garden,
          system: speaker.system,
        }));
  writePaper(file, plantPage(plant, garden, planGarden(garden, { forecast: true }), paperOptions({ system })));
}

/** A garden without places. */
async function nowhere() {
  const { readGarden } = await import('@sorrel/engine/document');
  return readGarden({ garden: words.oneTable, places: [] }, { today: todayOf(undefined, 'plants') }).garden;
}
