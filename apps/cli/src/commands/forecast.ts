import { writeFileSync } from 'node:fs';
import { createRecorder } from '@sorrel/engine/derivation';
import { type Foreseen, foresee, type Place, planGarden, type Recommendation } from '@sorrel/engine/plan';
import { answer } from '../answer.ts';
import { exit, Stop } from '../exit.ts';
import { forecastText } from '../forecast-text.ts';
import { gardenFor, gardenOptions } from '../garden-input.ts';
import { nameOf, reasonOf } from '../input.ts';
import { hanging } from '../layout.ts';
import { read, splitWhy } from '../options.ts';
import { timeWords } from '../time-words.ts';
import { words } from '../words.ts';
import { aheadOptions, yearsOf } from '../years.ts';

const options = { ...gardenOptions, ...aheadOptions, svg: { type: 'string' } } as const;

/** `sorrel forecast GARDEN`: what the pH of each place will do, with the plan or without. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, positionals } = read(splitWhy(args), options, 'forecast');
  const years = yearsOf(values.years, 'forecast');
  const { read: found, speaker } = await gardenFor(values, positionals, 'forecast');
  const { garden } = found;
  if (values.svg !== undefined && garden.places.length > 1)
    throw new Stop(exit.usage, words.usage('forecast', timeWords.needsOnePlace(garden.places.map(({ name }) => name))));
  const plans = planGarden(garden, { forecast: true }).recommendations;
  const withPlan = values.without !== true;
  let drawn: { readonly place: Place; readonly seen: Foreseen } | undefined;
  const code = await answer(found, speaker, { ...values, title: timeWords.forecastTitle(withPlan) }, (place, index) => {
    const plan = plans[index] as Recommendation;
    const recorder = values.why ? createRecorder() : undefined;
    const seen = foresee(place, garden.settings, withPlan ? plan.applications : [], { years }, recorder);
    const head = { decision: plan.decision, withPlan };
    if ('why' in seen)
      return { answered: false, json: { ...head, why: seen.why }, text: hanging('', speaker.say(seen.why), 2) };
    drawn = { place, seen };
    const { forecast, ...beside } = seen;
    const { account: _, evaluated: __, ...ahead } = forecast;
    return {
      answered: true,
      json: {
        ...head,
        ...(plan.overshootChance === undefined ? {} : { firstStepOvershoot: plan.overshootChance }),
        forecast: { ...beside, ...ahead },
      },
      text: forecastText(seen, plan, withPlan, speaker),
      derivation: recorder?.derivation(),
    };
  });
  if (values.svg === undefined || drawn === undefined) return code;
  const { forecastPicture } = await import('@sorrel/print/picture');
  const picture = forecastPicture(drawn.place.name, drawn.seen, { system: speaker.system });
  try {
    writeFileSync(values.svg, `<?xml version="1.0" encoding="UTF-8"?>\n${picture}\n`);
  } catch (error) {
    throw new Stop(exit.nothing, words.cannotWrite(nameOf(values.svg), reasonOf(error)));
  }
  process.stderr.write(`${timeWords.drawn(values.svg)}\n`);
  return code;
}
