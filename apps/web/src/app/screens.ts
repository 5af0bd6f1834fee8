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
  { path: '/place/:place', title: 'web.place', load: () => import('../screens/place/place.tsx') },
  {
    path: '/place/:place/edit',
    title: 'web.edit-place-title',
    load: () => import('../screens/edit-place/edit-place.tsx'),
  },
  { path: '/add-place', title: 'web.add-place', load: () => import('../screens/edit-place/add-place.tsx') },
  { path: '/test', title: 'web.nav-test', icon: 'test', load: () => import('../screens/test/test.tsx') },
  { path: '/test/:place', title: 'web.nav-test', load: () => import('../screens/test/test.tsx') },
  { path: '/test/:place/:test', title: 'web.test-correct-title', load: () => import('../screens/test/test.tsx') },
  {
    path: '/sampling',
    title: 'web.nav-sampling',
    icon: 'cores',
    load: () => import('../screens/sampling/sampling.tsx'),
  },
  { path: '/home-reading', title: 'web.reading-title', load: () => import('../screens/sampling/home-reading.tsx') },
  {
    path: '/home-reading/:place',
    title: 'web.reading-title',
    load: () => import('../screens/sampling/home-reading.tsx'),
  },
  { path: '/work', title: 'web.nav-work', icon: 'work', load: () => import('../screens/work/work.tsx') },
  { path: '/plants', title: 'web.nav-plants', icon: 'leaf', load: () => import('../screens/plants/plants.tsx') },
  { path: '/plants/:plant', title: 'web.plant', load: () => import('../screens/plants/plant.tsx') },
  { path: '/place/:place/usable', title: 'web.usable', load: () => import('../screens/usable/usable.tsx') },
  { path: '/symptoms', title: 'web.symptoms', load: () => import('../screens/symptoms/symptoms.tsx') },
  { path: '/place/:place/symptoms', title: 'web.symptoms', load: () => import('../screens/symptoms/symptoms.tsx') },
  {
    path: '/placing',
    title: 'web.nav-placing',
    icon: 'placing',
    load: () => import('../screens/placing/placing.tsx'),
  },
  { path: '/print', title: 'web.nav-print', icon: 'print', load: () => import('../screens/print/print.tsx') },
  {
    path: '/settings',
    title: 'web.nav-settings',
    icon: 'settings',
    load: () => import('../screens/settings/settings.tsx'),
  },
];

/** The screens of a soil day, in the order of the day. */
export const dayScreens: readonly Screen[] = [
  { path: '/', title: 'web.nav-day', icon: 'line', load: () => import('../screens/day/overview.tsx') },
  { path: '/check-in', title: 'web.nav-check-in', icon: 'plus', load: () => import('../screens/day/check-in.tsx') },
  { path: '/labels', title: 'web.day-labels-title', load: () => import('../screens/day/labels.tsx') },
  { path: '/readings', title: 'web.nav-readings', icon: 'test', load: () => import('../screens/day/readings.tsx') },
  { path: '/lab-file', title: 'web.nav-lab-file', icon: 'down', load: () => import('../screens/day/lab-file.tsx') },
  { path: '/results', title: 'web.nav-results', icon: 'print', load: () => import('../screens/day/results.tsx') },
  { path: '/meters', title: 'web.day-meters-title', load: () => import('../screens/day/meters.tsx') },
  {
    path: '/settings',
    title: 'web.nav-settings',
    icon: 'settings',
    load: () => import('../screens/settings/settings.tsx'),
  },
];
