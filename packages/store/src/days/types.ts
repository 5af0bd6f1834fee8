import type { Result } from '@sorrel/engine/derivation';
import type { JobState } from '../database/tables.ts';

export type { JobState } from '../database/tables.ts';

/** A sample as it is handed in to be planned. */
export interface SampleToPlan {
  /** Id of its place. */
  readonly place: string;
  readonly code: string;
  /** Hash of all that its plan depends on: planned anew when it is another. */
  readonly source: string;
}

/** How far one sample is. */
export interface SampleJob extends SampleToPlan {
  readonly state: JobState;
  /** How often planning it has failed. */
  readonly tries: number;
  /** Why it failed the last time. */
  readonly error?: string;
}

/** How far a day is. */
export interface DayProgress {
  readonly paused: boolean;
  /** What was said when the day was handed in. */
  readonly options: string;
  /** In check-in order. */
  readonly samples: readonly SampleJob[];
}

export interface SampleResult {
  readonly place: string;
  readonly code: string;
  readonly source: string;
  /** What the planner made of it. */
  readonly body: string;
}

/** One sample for the planner. */
export interface SampleWork {
  readonly garden: string;
  readonly place: string;
  readonly code: string;
  readonly options: string;
}

/**
 * Makes the plan of one sample.
 *
 * @returns what to keep, and the hash of what it was made from; undefined when the sample is no more
 * @throws Error when it cannot be planned; it is tried again
 */
export type SamplePlanner = (
  work: SampleWork,
) => Promise<{ readonly source: string; readonly body: string } | undefined>;

export interface WorkOptions {
  /** Samples planned at one time. */
  readonly most: number;
  /** How long to wait before looking again when there is nothing to do, milliseconds; default 1000. */
  readonly pause?: number;
  /** Hears of each sample: what came of it. */
  readonly told?: (work: SampleWork, came: Came) => void;
  /** Hears of a fault of the database; the work goes on when it is well again. */
  readonly trouble?: (error: unknown) => void;
}

/**
 * `done`: stored. `again`: failed and will be tried again. `failed`: given up. `late`: somebody else has taken it over,
 * nothing was stored. `gone`: the sample is no more.
 */
export type Came = 'done' | 'again' | 'failed' | 'late' | 'gone';

export interface DayWorker {
  /** Takes nothing new and waits for what is under way. */
  stop(): Promise<void>;
}

/** Plans the samples of soil days, each once. Survives its own end at any moment. */
export interface Days {
  /**
   * Hands in the samples of a day in check-in order. Those that are planned from the same source already stay as they
   * are; those that are not on the list are dropped.
   */
  enqueue(garden: string, samples: readonly SampleToPlan[], options: string): Promise<Result<void>>;
  /** Undefined for a garden that was never handed in. */
  progress(garden: string): Promise<Result<DayProgress | undefined>>;
  /** Begins nothing new; what is under way is finished. */
  pause(garden: string): Promise<Result<void>>;
  resume(garden: string): Promise<Result<void>>;
  /** Tries once more what was given up. */
  retry(garden: string): Promise<Result<void>>;
  /** What is planned, in check-in order. */
  results(garden: string): Promise<Result<readonly SampleResult[]>>;
  /** Begins to plan what waits, and whatever is handed in from now on. */
  work(planner: SamplePlanner, options: WorkOptions): DayWorker;
}
