import { document } from './document.ts';
import { evidence } from './evidence.ts';
import { forecast } from './forecast.ts';
import { intake } from './intake.ts';
import { learning } from './learning.ts';
import { lower } from './lower.ts';
import { materials } from './materials.ts';
import { nutrients } from './nutrients.ts';
import { picture } from './picture.ts';
import { placing } from './placing.ts';
import { plan } from './plan.ts';
import { print } from './print.ts';
import { requirement } from './requirement.ts';
import { sampling } from './sampling.ts';
import { soil } from './soil.ts';
import { store } from './store.ts';
import { units } from './units.ts';

/** Every sentence Sorrel can say, in English. Codes are prefixed with their room, e.g. `plan.leave-alone`. */
export const en = {
  ...units,
  ...evidence,
  ...soil,
  ...requirement,
  ...lower,
  ...materials,
  ...plan,
  ...document,
  ...forecast,
  ...learning,
  ...print,
  ...picture,
  ...store,
  ...sampling,
  ...nutrients,
  ...placing,
  ...intake,
} as const;

export type MessageCode = keyof typeof en;
export type Catalogue = Readonly<Record<MessageCode, string>>;
