import { exit, Stop } from '../exit.ts';
import { read } from '../options.ts';
import { gardenNamed, orStop, recordOptions, withRecord } from '../record.ts';
import { words } from '../words.ts';

const options = { ...recordOptions, record: { type: 'boolean' }, help: { type: 'boolean', short: 'h' } } as const;

/** `sorrel export --store STORE --garden NAME`: a garden as it stands, or with `--record` everything ever written. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, positionals } = read(args, options, 'export');
  const [stray] = positionals;
  if (stray !== undefined) throw new Stop(exit.usage, words.usage('export', words.strayWord(stray)));
  return withRecord(values.store, 'export', false, async (store) => {
    const { id } = await gardenNamed(store, values.garden);
    const text = values.record
      ? orStop(await store.exportGarden(id))
      : `${JSON.stringify(orStop(await store.assemble(id)).document, null, 2)}\n`;
    process.stdout.write(text);
    return exit.fine;
  });
}
