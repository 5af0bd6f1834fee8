import { plannedNutrients, usablePicture } from '@sorrel/engine/nutrients';
import { planGarden } from '@sorrel/engine/plan';
import { answer } from '../answer.ts';
import { exit, Stop } from '../exit.ts';
import { gardenFor, gardenOptions } from '../garden-input.ts';
import { hanging } from '../layout.ts';
import { nutrientWords } from '../nutrients-words.ts';
import { read } from '../options.ts';
import { paperOptions, writePaper } from '../paper.ts';
import { usableText } from '../usable-text.ts';
import { words } from '../words.ts';

const options = { ...gardenOptions, svg: { type: 'string' }, pdf: { type: 'string' } } as const;

/** `sorrel usable GARDEN`: what the pH of each place does to its nutrients. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, positionals } = read(args, options, 'usable');
  const { read: found, speaker } = await gardenFor(values, positionals, 'usable');
  const { places } = found.garden;
  if (values.svg !== undefined && places.length > 1)
    throw new Stop(exit.usage, words.usage('usable', nutrientWords.needsOnePlace(places.map(({ name }) => name))));
  // The same plan as `sorrel plan`, so that both name one pH.
  const plans = planGarden(found.garden, { forecast: true }).recommendations;
  let drawn: ReturnType<typeof usablePicture> | undefined;
  const frame = { json: values.json, title: nutrientWords.usableTitle, foot: nutrientWords.judged };
  const code = await answer(found, speaker, frame, (place, index) => {
    const plan = plans[index];
    const nutrients = plan === undefined ? undefined : plannedNutrients(place, plan);
    if (nutrients === undefined) return { answered: false, json: {}, text: hanging('', nutrientWords.noPh, 2) };
    const { today, planned } = nutrients;
    drawn = usablePicture(place.medium, { today, ...(planned === undefined ? {} : { planned }) });
    return { answered: true, json: { nutrients }, text: usableText(nutrients, speaker) };
  });
  if (values.pdf !== undefined) {
    const { usablePages } = await import('@sorrel/print');
    const list = places.flatMap((place, index) => {
      const recommendation = plans[index];
      return recommendation === undefined ? [] : [{ place, recommendation }];
    });
    writePaper(values.pdf, usablePages(list, paperOptions(speaker)));
  }
  if (values.svg === undefined || drawn === undefined) return code;
  const { usablePictureSvg } = await import('@sorrel/print/picture');
  const svg = usablePictureSvg(drawn, { system: speaker.system });
  writePaper(values.svg, `<?xml version="1.0" encoding="UTF-8"?>\n${svg}\n`);
  return code;
}
