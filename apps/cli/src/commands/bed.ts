import { readGarden } from '@sorrel/engine/document';
import { bedDocument, bedOptions, optionOf, unitsMeant } from '../bed-document.ts';
import { exit, Stop } from '../exit.ts';
import { read, splitWhy, todayOf, unitsOf } from '../options.ts';
import { serve } from '../serve.ts';
import { words } from '../words.ts';

/** `sorrel bed`: one bed from what is typed, by way of the same document a whole garden takes. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, positionals } = read(splitWhy(args), bedOptions, 'bed');
  if (positionals[0] !== undefined) throw new Stop(exit.usage, words.usage('bed', words.strayWord(positionals[0])));
  if (values.ph === undefined && values.plants === undefined)
    throw new Stop(exit.usage, words.usage('bed', words.nothingGiven));
  const today = todayOf(values['as-of'], 'bed');
  const units = unitsOf(values.units, 'bed') ?? unitsMeant(values);
  const result = readGarden(bedDocument(values, today), { today });
  const problems = result.problems.map((each) => ({ ...each, field: optionOf(each.field) }));
  // One bed is planned without a forecast, so the weather matters to nothing here.
  const choices = result.choices.filter(({ message }) => message.code !== 'document.choice-weather');
  const code = await serve({ ...result, problems, choices }, { ...values, units });
  // With one bed there is no rest to serve: a plan without its test is no answer to what was asked.
  return code === exit.partly && result.garden.places.every((place) => place.tests.length === 0) ? exit.nothing : code;
}
