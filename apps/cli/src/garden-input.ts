import { type ReadGarden, readGarden } from '@sorrel/engine/document';
import { exit, Stop } from './exit.ts';
import { readDocument } from './input.ts';
import { canUnicode } from './layout.ts';
import { oneFile, showing, todayOf, unitsOf } from './options.ts';
import { gardenNamed, orStop, recordOptions, withRecord } from './record.ts';
import { type Speaker, speakerFor } from './speak.ts';
import { words } from './words.ts';

/** Options of every command that works on a whole garden. */
export const gardenOptions = {
  ...showing,
  ...recordOptions,
  why: { type: 'boolean' },
  figure: { type: 'string' },
  'as-of': { type: 'string' },
  place: { type: 'string' },
} as const;

export type GardenValues = { readonly [K in keyof typeof gardenOptions]?: string | boolean | undefined };

/** A garden as a person named it, and who is spoken to. */
export interface Asked {
  readonly read: ReadGarden;
  readonly speaker: Speaker;
}

const text = (value: string | boolean | undefined): string | undefined =>
  typeof value === 'string' ? value : undefined;

/** The garden of a file or of a record, with only the place that was asked for. */
export async function gardenFor(values: GardenValues, files: readonly string[], command: string): Promise<Asked> {
  const units = unitsOf(text(values.units), command);
  const asked = text(values['as-of']);
  const today = todayOf(asked, command);
  const document = await documentOf(files, text(values.store), text(values.garden), command);
  const read = readGarden(document, { today, ...(asked === undefined ? {} : { asOf: asked }) });
  const speaker = speakerFor(units ?? read.units ?? 'metric', canUnicode(values.ascii === true));
  const wanted = text(values.place);
  if (wanted === undefined || read.garden.places.length === 0) return { read, speaker };
  const places = read.garden.places.filter(({ name }) => name.toLowerCase() === wanted.trim().toLowerCase());
  if (places.length === 0) {
    const known = read.garden.places.map(({ name }) => name);
    throw new Stop(exit.nothing, words.noPlace(wanted, known));
  }
  // What was taken for granted elsewhere is no concern of this place.
  const choices = read.choices.filter(
    (each) => each.place === undefined || places.some(({ name }) => name === each.place),
  );
  return { read: { ...read, choices, garden: { ...read.garden, places } }, speaker };
}

/** The document named, or the garden of a record as it stands. */
export async function documentOf(
  files: readonly string[],
  store: string | undefined,
  garden: string | undefined,
  command: string,
): Promise<unknown> {
  if (store === undefined && garden === undefined) return readDocument(oneFile(files, command));
  const [file] = files;
  if (file !== undefined) throw new Stop(exit.usage, words.usage(command, words.fileOrStore));
  return withRecord(store, command, false, async (record) => {
    const { id } = await gardenNamed(record, garden);
    return orStop(await record.assemble(id)).document;
  });
}
