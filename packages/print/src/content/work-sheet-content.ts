import type { Decision, Garden, GardenPlan, Place, Recommendation, ShoppingLine } from '@sorrel/engine/plan';
import { printPh } from '@sorrel/engine/units';
import { once, type Speaker } from '../speaker.ts';
import { decisionOf } from './decision-words.ts';
import { dosesOf } from './doses.ts';
import { phLine } from './ph-line.ts';
import { extent, targetText } from './place-words.ts';

/** What needs hands first, then what needs finding out, then what needs nothing. */
const need: Readonly<Record<Decision, number>> = {
  raise: 0,
  lower: 0,
  'find out first': 1,
  'grow something else': 2,
  'not practical': 3,
  'leave alone': 4,
};

/** Places with their advice, those that need most first; equals keep the order of the garden. */
export function byNeed(garden: Garden, plan: GardenPlan): (readonly [Place, Recommendation])[] {
  const pairs = garden.places.flatMap((place, index): (readonly [Place, Recommendation])[] => {
    const advice = plan.recommendations[index];
    return advice === undefined ? [] : [[place, advice]];
  });
  return pairs.sort(([, a], [, b]) => need[a.decision] - need[b.decision]);
}

/** The words and figures of a garden's work sheet, in the order they stand on the page. */
export function workSheetContent(garden: Garden, plan: GardenPlan, speaker: Speaker) {
  const pairs = byNeed(garden, plan);
  return {
    name: garden.name,
    day: speaker.day(garden.settings.today),
    line: phLine(pairs, speaker),
    shopping: plan.shopping.map((line) => shoppingRow(line, speaker)),
    total: total(plan.shopping, speaker),
    places: pairs.map(([place, advice]) => placeCard(place, advice, speaker)),
  };
}

function placeCard(place: Place, advice: Recommendation, speaker: Speaker) {
  const said = new Set<string>();
  const { present, retest } = advice;
  const spread = printPh(Math.max(0.1, present?.sd ?? 0));
  return {
    name: place.name,
    id: place.id,
    extent: extent(place, speaker),
    decision: decisionOf(advice.decision, speaker),
    now:
      present === undefined
        ? speaker.word('print.line-no-reading')
        : speaker.word('print.ph-give-or-take', { ph: printPh(present.mean), spread }),
    target: targetText(place, advice, speaker),
    // Where hands are busy the headline is enough; the handout gives the rest.
    reasons: once(speaker, advice.applications.length > 0 ? advice.reasons.slice(0, 1) : advice.reasons, said),
    doses: dosesOf(advice, speaker),
    cautions: once(speaker, advice.cautions, said),
    ask: once(speaker, advice.ask, said),
    retest:
      retest === undefined
        ? ''
        : speaker.word('print.retest-box', {
            days: speaker.days(retest.earliest, retest.latest),
            why: speaker.say(retest.why),
          }),
  };
}

/** One product of the shopping list in words; what is not needed stays empty. */
export function shoppingRow(line: ShoppingLine, speaker: Speaker) {
  const { bags = 0, product, cost = 0 } = line;
  return {
    product: product.name,
    needed: speaker.weight(line.needed),
    onHand: line.onHand > 0 ? speaker.weight(line.onHand) : '–',
    buy: line.buy > 0 ? speaker.weight(line.buy) : '–',
    bags:
      bags === 0 || product.bag === undefined
        ? '–'
        : speaker.word('print.shop-bag', { count: bags, mass: speaker.weight(product.bag.mass) }),
    cost: cost === 0 ? '–' : speaker.money(cost),
  };
}

/** The known costs together; nothing when none is known. */
function total(shopping: readonly ShoppingLine[], speaker: Speaker): string {
  const cost = shopping.reduce((sum, line) => sum + (line.cost ?? 0), 0);
  return cost > 0 ? speaker.money(cost) : '';
}
