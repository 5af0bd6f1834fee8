import type { ComponentType } from 'react';
import type { IconName } from '../kit/icon.tsx';
import type { WebCode } from '../words/label.ts';

export interface Screen {
  /** Below `/g/<garden>`, as wouter writes paths: `/place/:place`. */
  readonly path: string;
  readonly title: WebCode;
  /** Stands in the bar of screens when given. */
  readonly icon?: IconName;
  readonly load: () => Promise<{ readonly default: ComponentType }>;
}

/** Every screen of a garden; each is fetched when it is first opened. A new screen is a new line here. */
export const screens: readonly Screen[] = [
  {
    path: '/',
    title: 'web.nav-garden',
    icon: 'line',
    load: () => import('../screens/garden/garden.tsx'),
  },
];
