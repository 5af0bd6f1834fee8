import type { Entry } from '../../data/garden-store.ts';
import { add, remove } from '../../data/write.ts';
import { today } from '../../engine/garden-plan.ts';
import type { Sample } from './day-model.ts';
import type { Setup } from './setup.ts';

/** A reading of a sample. What was read of it with a meter before is taken off, and stays in the record. */
export const readingEntries = (garden: string, sample: Sample, ph: number, setup: Setup): readonly Entry[] => [
  ...sample.readings.map(({ id }) => remove(garden, id)),
  add(
    garden,
    'reading',
    { date: today(), by: 'slurry-meter', ph: { value: ph, in: setup.method }, meter: setup.meter },
    sample.id,
  ),
];
