import { alternatives, isOpen, planGarden, type Recommendation } from '@sorrel/engine/plan';
import { answer } from '../answer.ts';
import { compareText } from '../compare-text.ts';
import { gardenFor, gardenOptions } from '../garden-input.ts';
import { read } from '../options.ts';
import { timeWords } from '../time-words.ts';

const { why: _, figure: __, ...options } = gardenOptions;

/** `sorrel compare GARDEN`: the ways open to a place, side by side. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, positionals } = read(args, options, 'compare');
  const { read: found, speaker } = await gardenFor(values, positionals, 'compare');
  const { garden } = found;
  const plans = planGarden(garden, { forecast: true }).recommendations;
  const frame = { ...values, title: timeWords.compareTitle, foot: timeWords.compareFoot };
  return answer(found, speaker, frame, (place, index) => {
    const plan = plans[index] as Recommendation;
    const ways = alternatives(place, garden.settings, plan, garden.products);
    const json = ways.map(({ forecast: ___, ...way }) => ({ ...way, open: isOpen({ ...way }) }));
    return {
      answered: ways.length > 0,
      json: { decision: plan.decision, ways: json },
      text: compareText(ways, plan, garden.currencySymbol, speaker),
    };
  });
}
