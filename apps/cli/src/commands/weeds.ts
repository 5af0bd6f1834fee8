import { weedEvidence } from '@sorrel/engine/nutrients';
import { exit, Stop } from '../exit.ts';
import { canUnicode, hanging } from '../layout.ts';
import { nutrientWords } from '../nutrients-words.ts';
import { read, showing } from '../options.ts';
import { speakerFor, toAscii } from '../speak.ts';
import { words } from '../words.ts';

/** `sorrel weeds NAME ...`: what weeds say of the pH, which is little. */
export function run(args: readonly string[]): number {
  const { values, positionals } = read(args, showing, 'weeds');
  if (positionals.length === 0) throw new Stop(exit.usage, words.usage('weeds', nutrientWords.noWeeds));
  const found = weedEvidence(positionals);
  const code = found.known.length === 0 ? exit.nothing : found.unknown.length > 0 ? exit.partly : exit.fine;
  const speaker = speakerFor('metric', canUnicode(values.ascii));
  const texts = found.messages.map(speaker.say);
  if (values.json) {
    process.stdout.write(`${JSON.stringify({ ...found, messages: texts }, null, 2)}\n`);
    return code;
  }
  const page = [nutrientWords.leanTitle, ...texts.map((each) => hanging('- ', each, 2))].join('\n');
  process.stdout.write(`${speaker.unicode ? page : toAscii(page)}\n`);
  return code;
}
