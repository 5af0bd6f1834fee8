import { exit, Stop } from '../exit.ts';
import { read } from '../options.ts';
import { orStop, withRecord } from '../record.ts';
import { tableText } from '../table-text.ts';
import { words } from '../words.ts';

const options = {
  store: { type: 'string' },
  json: { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
} as const;

/** `sorrel gardens --store STORE`: which gardens a record holds. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, positionals } = read(args, options, 'gardens');
  const [stray] = positionals;
  if (stray !== undefined) throw new Stop(exit.usage, words.usage('gardens', words.strayWord(stray)));
  return withRecord(values.store, 'gardens', false, async (store) => {
    const gardens = orStop(await store.gardens());
    if (values.json) process.stdout.write(`${JSON.stringify(gardens, null, 2)}\n`);
    else if (gardens.length === 0) process.stderr.write(`${words.noGardens}\n`);
    else {
      const [name, places, id] = words.gardenColumns;
      const rows = gardens.map((line) => [line.name, String(line.places), line.id]);
      const columns = [{ title: name, flexible: true }, { title: places, align: 'right' as const }, { title: id }];
      process.stdout.write(`${tableText(columns, rows)}\n`);
    }
    return gardens.length === 0 ? exit.nothing : exit.fine;
  });
}
