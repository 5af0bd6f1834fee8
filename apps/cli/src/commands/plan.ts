import { readGarden } from '@sorrel/engine/document';
import { exit, Stop } from '../exit.ts';
import { readDocument } from '../input.ts';
import { oneFile, read, showing, splitWhy, todayOf, unitsOf } from '../options.ts';
import { gardenNamed, orStop, recordOptions, withRecord } from '../record.ts';
import { serve } from '../serve.ts';
import { words } from '../words.ts';

const options = {
  ...showing,
  ...recordOptions,
  why: { type: 'boolean' },
  figure: { type: 'string' },
  'as-of': { type: 'string' },
  place: { type: 'string' },
} as const;

/** The document named, or the garden of a record as it stands. */
async function documentOf(files: readonly string[], store: string | undefined, garden: string | undefined) {
  if (store === undefined && garden === undefined) return readDocument(oneFile(files, 'plan'));
  const [file] = files;
  if (file !== undefined) throw new Stop(exit.usage, words.usage('plan', words.fileOrStore));
  return withRecord(store, 'plan', false, async (record) => {
    const { id } = await gardenNamed(record, garden);
    return orStop(await record.assemble(id)).document;
  });
}

/** `sorrel plan GARDEN`: the whole main job, from a document to a plan. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, positionals } = read(splitWhy(args), options, 'plan');
  const units = unitsOf(values.units, 'plan');
  const asked = values['as-of'];
  const today = todayOf(asked, 'plan');
  const document = await documentOf(positionals, values.store, values.garden);
  const result = readGarden(document, { today, ...(asked === undefined ? {} : { asOf: asked }) });
  const wanted = values.place?.toLowerCase();
  const places =
    wanted === undefined
      ? result.garden.places
      : result.garden.places.filter((place) => place.name.toLowerCase() === wanted);
  if (wanted !== undefined && places.length === 0 && result.garden.places.length > 0) {
    process.stderr.write(
      `${words.noPlace(
        values.place ?? '',
        result.garden.places.map((place) => place.name),
      )}\n`,
    );
    return exit.nothing;
  }
  return serve({ ...result, garden: { ...result.garden, places } }, { ...values, units });
}
