import type { PlannedSample } from '@sorrel/engine/day';
import type { HandoutOptions } from '../handouts.ts';

/** One sample of a soil day with its plan, and who brought it. */
export interface DaySample extends PlannedSample {
  readonly person?: string;
}

export interface DayOptions extends HandoutOptions {
  /** Name of the day. */
  readonly title: string;
}
