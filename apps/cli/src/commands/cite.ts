import { cite, isSource, sources } from '@sorrel/almanac/sources';
import { nearest } from '@sorrel/engine/units';
import { exit, Stop } from '../exit.ts';
import { hanging } from '../layout.ts';
import { read, showing } from '../options.ts';
import { words } from '../words.ts';

/** `sorrel cite KEY ...`: the publication behind a figure. */
export function run(args: readonly string[]): number {
  const { values, positionals } = read(args, showing, 'cite');
  if (positionals.length === 0) throw new Stop(exit.usage, words.usage('cite', words.noKey));
  const known = positionals.filter(isSource);
  if (values.json) {
    process.stdout.write(
      `${JSON.stringify(
        sources.filter((row) => known.includes(row.key)),
        null,
        2,
      )}\n`,
    );
  } else for (const key of known) process.stdout.write(`${hanging(`${key}: `, cite(key), 0)}\n`);
  const keys = sources.map((row) => row.key);
  for (const key of positionals)
    if (!isSource(key)) process.stderr.write(`${words.citeUnknown(key, nearest(key, keys))}\n`);
  return known.length === positionals.length ? exit.fine : known.length === 0 ? exit.nothing : exit.partly;
}
