import { readGarden } from '@sorrel/engine/document';
import { exit } from '../exit.ts';
import { readDocument } from '../input.ts';
import { canUnicode } from '../layout.ts';
import { oneFile, read, showing, todayOf, unitsOf } from '../options.ts';
import { choicesText, problemsText } from '../problems-text.ts';
import { speakerFor } from '../speak.ts';
import { words } from '../words.ts';

const options = { ...showing, 'as-of': { type: 'string' } } as const;

/** `sorrel check GARDEN`: reads and reports, plans nothing. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, positionals } = read(args, options, 'check');
  const file = oneFile(positionals, 'check');
  const units = unitsOf(values.units, 'check');
  const { garden, problems, skipped, choices, ...rest } = readGarden(await readDocument(file), {
    today: todayOf(values['as-of'], 'check'),
  });
  const speaker = speakerFor(units ?? rest.units ?? 'metric', canUnicode(values.ascii));
  if (values.json) {
    const said = choices.map((each) => ({ ...each, message: { ...each.message, text: speaker.say(each.message) } }));
    const places = garden.places.map((place) => place.name);
    process.stdout.write(`${JSON.stringify({ places, problems, leftOut: skipped, choices: said }, null, 2)}\n`);
  } else {
    process.stdout.write(
      problems.length === 0 ? `${words.allFine(garden.places.length)}\n` : problemsText(problems, skipped),
    );
    const taken = choicesText(choices, speaker);
    if (taken !== '') process.stdout.write(`\n${taken}`);
  }
  return garden.places.length === 0 ? exit.nothing : problems.length > 0 ? exit.partly : exit.fine;
}
