import { methodRows } from '@sorrel/almanac/methods';
import { exit } from '../exit.ts';
import { read, showing } from '../options.ts';
import { tableText } from '../table-text.ts';
import { words } from '../words.ts';

/** `sorrel methods`: the published methods that read a soil test. */
export function run(args: readonly string[]): number {
  const { values, positionals } = read(args, showing, 'methods');
  const wanted = positionals.join(' ').trim().toLowerCase();
  const found = methodRows.filter((row) =>
    [row.id, row.title, row.procedure, ...row.regions].some((each) => each.toLowerCase().includes(wanted)),
  );
  if (values.json) {
    process.stdout.write(`${JSON.stringify(found, null, 2)}\n`);
    return found.length === 0 ? exit.nothing : exit.fine;
  }
  if (found.length === 0) {
    process.stderr.write(`${words.none(wanted)}\n`);
    return exit.nothing;
  }
  const [method, where, speaks, sources] = words.methodColumns;
  const table = tableText(
    [
      { title: method, flexible: true },
      { title: where, flexible: true },
      { title: speaks },
      { title: sources, flexible: true },
    ],
    found.map((row) => [
      row.title + (row.basis === 'memory' ? words.memoryMark : ''),
      row.regions.join(', ') || words.everywhere,
      row.used === 'yes' ? words.yes : words.onlyCompared,
      row.sources.join(', '),
    ]),
  );
  process.stdout.write(`${table}\n\n${words.memoryNote}\n`);
  return exit.fine;
}
