import { cautionOf } from '@sorrel/almanac/cautions';
import type { Message } from '../derivation/message.ts';
import type { Product } from './material.ts';
import type { UseContext } from './refuse.ts';

/** What decides which cautions are worth a line. Unknown counts as yes. */
export type CautionContext = Pick<UseContext, 'situation'> & {
  readonly nearOpenWater?: boolean;
  readonly childrenOrPets?: boolean;
};

/**
 * The cautions that travel with a product, most serious first, label and weather last.
 * Lines about water and children are left out only when the person said there are none.
 *
 * @source almanac table `cautions`, one row a code with its sources
 */
export function cautionsFor(product: Product, context: CautionContext): readonly Message[] {
  const around = `${context.situation} ${context.nearOpenWater} ${context.childrenOrPets}`;
  let known = said.get(product);
  if (known === undefined) {
    known = new Map();
    said.set(product, known);
  }
  let cautions = known.get(around);
  if (cautions === undefined) {
    cautions = listed(product, context);
    known.set(around, cautions);
  }
  return cautions;
}

/** The lists made so far: the same few products go on thousands of beds. */
const said = new WeakMap<Product, Map<string, readonly Message[]>>();

function listed(product: Product, context: CautionContext): Message[] {
  const codes = product.cautions.filter(
    (code) =>
      code !== 'label' &&
      !(code === 'water' && (context.nearOpenWater === false || context.situation === 'container')) &&
      !(code === 'children' && context.childrenOrPets === false),
  );
  if (context.situation === 'lawn' && product.role === 'acidifying') {
    codes.push('lawn-water-in');
    if (codes.includes('sulfur-fire')) codes.push('lawn-heat');
  }
  const order = [...codes].sort((a, b) => rank(a) - rank(b));
  // Frost, ponds and the three months' wait are matters of open ground.
  if (product.currency !== 0 && context.situation !== 'container') order.push('weather', 'retest-wait');
  order.push('label');
  return order.map((code) => ({ code: messageOf(code) }));
}

/** Harm to people first, then fire, then plants and places. */
const SERIOUS = [
  'caustic',
  'acid',
  'metals',
  'sulfur-fire',
  'ash-cold',
  'ash-lye',
  'eyes',
  'dust',
  'sulfur-lungs',
  'ammonia',
  'raw-manure',
  'children',
  'water',
];

const rank = (code: string): number => {
  const place = SERIOUS.indexOf(code);
  return place < 0 ? SERIOUS.length : place;
};

function messageOf(code: string): Message['code'] {
  const row = cautionOf(code);
  if (row === undefined) throw new RangeError(`the almanac has no caution "${code}"`);
  // The almanac's test holds every message of the table to the words.
  return row.message as Message['code'];
}
