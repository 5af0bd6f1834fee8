import { day } from './print/day.ts';
import { handout } from './print/handout.ts';
import { phLine } from './print/ph-line.ts';
import { placing } from './print/placing.ts';
import { plant } from './print/plant.ts';
import { symptoms } from './print/symptoms.ts';
import { usable } from './print/usable.ts';
import { workSheet } from './print/work-sheet.ts';
import { working } from './print/working.ts';

/** What the `print` room says on paper, one template a code. `{name}` stands for a parameter of the message. One file a paper. */
export const print = {
  ...plant,
  ...usable,
  ...symptoms,
  ...phLine,
  ...handout,
  ...working,
  ...workSheet,
  ...day,
  ...placing,

  'print.date': '{day} {month} {year}',
  'print.month-1': 'Jan',
  'print.month-2': 'Feb',
  'print.month-3': 'Mar',
  'print.month-4': 'Apr',
  'print.month-5': 'May',
  'print.month-6': 'Jun',
  'print.month-7': 'Jul',
  'print.month-8': 'Aug',
  'print.month-9': 'Sep',
  'print.month-10': 'Oct',
  'print.month-11': 'Nov',
  'print.month-12': 'Dec',
  'print.days': '{from} to {to}',
  'print.page': 'Page',
  'print.printed': 'Printed {date}',
  'print.plan-of': 'Plan of',
  'print.memory-mark': '*',
  'print.memory-note': '* From memory: nobody could find the publication again to check the figure.',
  'print.local-rules': 'Local rules, the label on the bag and licensed advice come before anything printed here.',

  // Names of things
  'print.title-handout': 'Soil pH of {place}',
  'print.title-handouts': 'Soil pH handouts',
  'print.title-work-sheet': 'Work sheet: {garden}',
  'print.title-labels': 'Bed labels',
  'print.kind-bed': 'bed',
  'print.kind-plot': 'plot',
  'print.kind-container': 'container',
  'print.kind-lawn': 'lawn',
  'print.extent-ground': '{kind}, {area}, treated {depth} deep',
  'print.extent-label': '{kind}, {area}',
  'print.extent-pots': '{kind}, {volume} of mix',
  'print.id': 'Id',
  'print.sample': 'Sample',
  'print.garden': 'Garden',

  'print.decision-leave': 'Leave it alone',
  'print.decision-raise': 'Raise the pH',
  'print.decision-lower': 'Lower the pH',
  'print.decision-not-practical': 'Do not try to change it',
  'print.decision-grow-else': 'Grow something else here',
  'print.decision-find-out': 'Find out first',
  'print.verdict-leave': 'leave',
  'print.verdict-raise': 'raise',
  'print.verdict-lower': 'lower',
  'print.verdict-not-practical': 'do not try',
  'print.verdict-grow-else': 'other plants',
  'print.verdict-find-out': 'find out',

  // Labels
  'print.label-scan': 'Scan for the plan and the record of this place.',

  // Calendar
  'print.calendar-name': 'Sorrel: {garden}',
  'print.calendar-apply': '{place}: spread {mass} of {product}',
  'print.calendar-apply-later': '{place}: step {number}, only if the retest asks for it',
  'print.calendar-retest': '{place}: test the soil again',
  'print.calendar-weigh': 'Weigh out {mass} of {product} ({scoop}).',
  'print.calendar-window': 'Any fit day from {from} to {to}.',
} as const;
