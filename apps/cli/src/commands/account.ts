import { createRecorder } from '@sorrel/engine/derivation';
import { foresee, planGarden, type Recommendation, yearOfTheSame } from '@sorrel/engine/plan';
import { accountText } from '../account-text.ts';
import { answer } from '../answer.ts';
import { gardenFor, gardenOptions } from '../garden-input.ts';
import { hanging } from '../layout.ts';
import { read, splitWhy } from '../options.ts';
import { timeWords } from '../time-words.ts';
import { aheadOptions, yearsOf } from '../years.ts';

const options = { ...gardenOptions, ...aheadOptions } as const;

/** `sorrel account GARDEN`: everything that pushes the pH of each place, year by year, in one currency. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, positionals } = read(splitWhy(args), options, 'account');
  const years = yearsOf(values.years, 'account');
  const { read: found, speaker } = await gardenFor(values, positionals, 'account');
  const { garden } = found;
  const withPlan = values.without !== true;
  const plans = withPlan ? planGarden(garden, { forecast: true }).recommendations : [];
  const frame = { ...values, title: timeWords.accountTitle, foot: timeWords.accountFoot };
  return answer(found, speaker, frame, (place, index) => {
    const plan = plans[index] as Recommendation | undefined;
    const recorder = values.why ? createRecorder() : undefined;
    // The account is of the central run: the members behind the bands are not needed.
    const seen = foresee(place, garden.settings, plan?.applications ?? [], { years, members: 1 }, recorder);
    if ('why' in seen)
      return { answered: false, json: { withPlan, why: seen.why }, text: hanging('', speaker.say(seen.why), 2) };
    const { account } = seen.forecast;
    const same = yearOfTheSame(place, garden.settings);
    return {
      answered: true,
      json: { withPlan, account, ...(same === undefined ? {} : { same }) },
      text: accountText(account.years, account.unreacted, same, speaker),
      derivation: recorder?.derivation(),
    };
  });
}
