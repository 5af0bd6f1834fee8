export { type CalendarOptions, calendar } from './calendar.ts';
export type { HandoutExtras } from './content/handout-content.ts';
export { type Handout, type HandoutOptions, handout, handouts } from './handouts.ts';
export { type LabelOptions, labels } from './labels.ts';
export { type Paper, type PrintOptions, paperOf } from './options.ts';
export { type TableOptions, table } from './table.ts';
export { workSheet } from './work-sheet.ts';
