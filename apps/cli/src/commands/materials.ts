import { type MaterialRow, materials } from '@sorrel/almanac/materials';
import { exit } from '../exit.ts';
import { read, showing } from '../options.ts';
import { tableText } from '../table-text.ts';
import { words } from '../words.ts';

/** `sorrel materials [WORDS]`: what moves pH, what only seems to, and what does not belong in a garden. */
export function run(args: readonly string[]): number {
  const { values, positionals } = read(args, showing, 'materials');
  const wanted = positionals.join(' ').trim().toLowerCase();
  // From the start of a word, so that "ash" does not find potash.
  const fits = (name: string): boolean => ` ${name.toLowerCase().replace(/[-,]/g, ' ')}`.includes(` ${wanted}`);
  const found = materials.filter((row) => [row.key, row.name, row.role, ...row.alsoCalled].some(fits));
  if (values.json) process.stdout.write(`${JSON.stringify(found, null, 2)}\n`);
  else if (found.length === 0) process.stderr.write(`${words.none(wanted)}\n`);
  else process.stdout.write(`${listed(found)}\n\n${words.materialNote}\n${words.memoryNote}\n`);
  return found.length === 0 ? exit.nothing : exit.fine;
}

function listed(found: readonly MaterialRow[]): string {
  const [name, use, worth, key] = words.materialColumns;
  return tableText(
    [{ title: name, flexible: true }, { title: use }, { title: worth, align: 'right' }, { title: key }],
    found.map((row) => [
      row.name,
      row.refused === undefined ? row.role : words.notAtHome,
      `${Math.round(row.nvTypical * 100)} %${row.basis === 'memory' ? words.memoryMark : ''}`,
      row.key,
    ]),
  );
}
