import type { Message } from '../derivation/message.ts';
import type { Place } from './place.ts';

const RAISE: Readonly<Record<Place['situation'], readonly Message[]>> = {
  'open ground': [{ code: 'plan.how-spread-evenly' }, { code: 'plan.how-dig-in' }],
  'around plants': [{ code: 'plan.how-spread-evenly' }, { code: 'plan.how-scratch-in' }],
  lawn: [{ code: 'plan.how-lawn-lime' }],
  container: [{ code: 'plan.how-pot-mix' }],
};
const LOWER: Readonly<Record<Place['situation'], readonly Message[]>> = {
  'open ground': [{ code: 'plan.how-spread-evenly' }, { code: 'plan.how-dig-in' }, { code: 'plan.how-sulfur-wait' }],
  'around plants': [
    { code: 'plan.how-spread-evenly' },
    { code: 'plan.how-scratch-in' },
    { code: 'plan.how-sulfur-wait' },
  ],
  lawn: [{ code: 'plan.how-lawn-sulfur' }],
  container: [{ code: 'plan.how-pot-mix' }],
};

/** How a dressing is put down, in the order it is done. Constant lists, so that tables of thousands share them. */
export const howTo = (direction: 'raise' | 'lower', place: Place): readonly Message[] =>
  (direction === 'raise' ? RAISE : LOWER)[place.situation];
