import { findPlant, nearestPlants, type PlantRow, plants } from '@sorrel/almanac/plants';
import { exit } from '../exit.ts';
import { read, showing } from '../options.ts';
import { tableText } from '../table-text.ts';
import { words } from '../words.ts';

/** `sorrel plants [WORDS]`: the plants and the pH they want. */
export function run(args: readonly string[]): number {
  const { values, positionals } = read(args, showing, 'plants');
  const wanted = positionals.join(' ').trim();
  const found = matching(wanted);
  if (values.json) {
    process.stdout.write(`${JSON.stringify(found, null, 2)}\n`);
    return found.length === 0 ? exit.nothing : exit.fine;
  }
  if (found.length === 0) {
    const near = nearestPlants(wanted).map((row) => `"${row.name}"`);
    process.stderr.write(
      `${words.none(wanted)}${near.length === 0 ? '' : ` ${words.didYouMean(near.join(' or '))}`}\n`,
    );
    return exit.nothing;
  }
  const [name, range, key, sources] = words.plantColumns;
  const table = tableText(
    [{ title: name, flexible: true }, { title: range }, { title: key }, { title: sources }],
    found.map((row) => [row.name, rangeOf(row), row.key, sourcesOf(row)]),
  );
  const memory = found.some((row) => row.basis === 'memory') ? `\n${words.memoryNote}\n` : '';
  process.stdout.write(`${table}\n${memory}`);
  return exit.fine;
}

function matching(wanted: string): readonly PlantRow[] {
  if (wanted === '') return plants;
  const part = wanted.toLowerCase();
  const named = plants.filter((row) =>
    [row.name, row.botanical, row.group, row.reaction, ...row.also].some((each) => each.toLowerCase().includes(part)),
  );
  const exact = findPlant(wanted);
  return exact === undefined || named.includes(exact) ? named : [exact, ...named];
}

const rangeOf = (row: PlantRow): string =>
  `${row.low.toFixed(1)} to ${row.high.toFixed(1)}${row.basis === 'memory' ? words.memoryMark : ''}`;

const sourcesOf = (row: PlantRow): string =>
  row.sources.length > 2 ? `${row.sources.slice(0, 2).join(', ')} +${row.sources.length - 2}` : row.sources.join(', ');
