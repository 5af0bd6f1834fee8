import type { PlaceVerdict } from '@sorrel/engine/placing';
import type { IconName } from '../../kit/icon.tsx';
import { label, type WebCode } from '../../words/label.ts';

/** How a plant and a place go together, in words. */
export const fitText = (verdict: PlaceVerdict): string =>
  label(`web.plant-fit-${verdict.replaceAll(' ', '-')}` as WebCode);

export const fitIcon: Readonly<Record<PlaceVerdict, IconName>> = {
  suits: 'fine',
  'suits after the plan': 'work',
  'stands it': 'leaf',
  'does not suit': 'care',
  'not known': 'test',
};
