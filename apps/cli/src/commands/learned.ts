import { createRecorder } from '@sorrel/engine/derivation';
import { learnedForReport } from '@sorrel/engine/document';
import { lessons } from '@sorrel/engine/plan';
import { answer } from '../answer.ts';
import { gardenFor, gardenOptions } from '../garden-input.ts';
import { hanging } from '../layout.ts';
import { learnedText } from '../learned-text.ts';
import { read, splitWhy } from '../options.ts';
import { timeWords } from '../time-words.ts';

/** `sorrel learned GARDEN`: what the record of each place has taught, how sure that is, and which tests do not fit. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, positionals } = read(splitWhy(args), gardenOptions, 'learned');
  const { read: found, speaker } = await gardenFor(values, positionals, 'learned');
  const { settings } = found.garden;
  return answer(found, speaker, { ...values, title: timeWords.learnedTitle }, (place) => {
    const recorder = values.why ? createRecorder() : undefined;
    const learned = lessons(place, settings, recorder);
    if (learned === undefined) {
      const why = { code: 'learning.no-tests' } as const;
      return { answered: false, json: { why }, text: hanging('', timeWords.noLessons, 2) };
    }
    return {
      answered: true,
      json: { learned: learnedForReport(learned) },
      text: learnedText(place, learned, speaker),
      derivation: recorder?.derivation(),
    };
  });
}
