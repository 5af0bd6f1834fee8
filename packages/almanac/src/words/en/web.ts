import { day } from './web/day.ts';
import { editPlace } from './web/edit-place.ts';
import { garden } from './web/garden.ts';
import { gardens } from './web/gardens.ts';
import { paper } from './web/paper.ts';
import { place } from './web/place.ts';
import { placing } from './web/placing.ts';
import { plants } from './web/plants.ts';
import { sampling } from './web/sampling.ts';
import { settings } from './web/settings.ts';
import { shell } from './web/shell.ts';
import { symptoms } from './web/symptoms.ts';
import { test } from './web/test.ts';
import { usable } from './web/usable.ts';
import { ways } from './web/ways.ts';
import { work } from './web/work.ts';

/**
 * Labels of the web app, one file a screen. Kept apart from the sentences of the rooms, so that the first view of the
 * page and the command line load no more than they say. Codes ending in `-one` and `-other` are forms of one label.
 */
export const web = {
  ...shell,
  ...gardens,
  ...garden,
  ...place,
  ...editPlace,
  ...test,
  ...sampling,
  ...work,
  ...placing,
  ...paper,
  ...settings,
  ...ways,
  ...plants,
  ...usable,
  ...symptoms,
  ...day,
} as const;

export type WebCode = keyof typeof web;
export type WebCatalogue = Readonly<Record<WebCode, string>>;
