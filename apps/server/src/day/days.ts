import type { z } from '@hono/zod-openapi';
import type { UnitSystem } from '@sorrel/engine/units';
import type { DaySample, Handout, Paper, DayOptions as PaperOptions } from '@sorrel/print';
import { Refusal } from '../http/problem-details.ts';
import { orRefuse } from '../http/store-refusals.ts';
import { type Room, todayOf } from '../room.ts';
import type { dayProgress } from '../schemas/day.ts';
import { words } from '../words.ts';
import { type DayOptions, keptPlans } from './planner.ts';
import { samplesOf } from './samples.ts';

type Progress = z.output<typeof dayProgress>;

export interface AskedPaper {
  readonly units?: UnitSystem | undefined;
  readonly paper?: Paper | undefined;
  readonly largePrint?: 'yes' | 'no' | undefined;
  readonly contact?: string | undefined;
}

export interface MadeDay {
  /** What is planned, in check-in order. */
  readonly samples: readonly DaySample[];
  readonly options: PaperOptions;
  handouts(): readonly Handout[];
}

export interface Days {
  plan(garden: string, asOf: string | undefined): Promise<Progress>;
  progress(garden: string): Promise<Progress>;
  step(garden: string, name: 'pause' | 'resume' | 'retry'): Promise<Progress>;
  /**
   * What is planned so far.
   *
   * @throws Refusal when nothing is
   */
  made(garden: string, asked: AskedPaper, origin: string): Promise<MadeDay>;
}

/** Soil days of the record, for the routes. */
export function createDays(room: Room): Days {
  const { store } = room;

  /** The day planned for the last time, undefined before the first. */
  async function handedIn(garden: string) {
    const run = orRefuse(await store.days.progress(garden));
    return { run, asOf: run === undefined ? undefined : (JSON.parse(run.options) as DayOptions).asOf };
  }

  /** The garden's own day goes before today's. */
  async function usualDay(garden: string): Promise<string> {
    const { document } = orRefuse(await store.assemble(garden));
    return document.asOf ?? todayOf(room);
  }

  async function progress(garden: string): Promise<Progress> {
    const { run, asOf } = await handedIn(garden);
    const { samples } = await samplesOf(store, garden, asOf ?? (await usualDay(garden)));
    const known = new Map((run?.samples ?? []).map((job) => [job.place, job]));
    const jobs = samples.map(({ place, code, source }): Progress['jobs'][number] => {
      const job = known.get(place);
      return {
        place,
        code,
        state: job?.state ?? 'new',
        changed: job?.source !== source,
        ...(job?.error === undefined ? {} : { error: job.error }),
      };
    });
    const count = (state: string) => jobs.filter((job) => job.state === state).length;
    const [waiting, running] = [count('waiting'), count('running')];
    return {
      state: run === undefined ? 'none' : waiting + running === 0 ? 'done' : run.paused ? 'paused' : 'running',
      asOf: asOf ?? null,
      samples: jobs.length,
      waiting,
      running,
      done: count('done'),
      failed: count('failed'),
      changed: jobs.filter(({ changed }) => changed).length,
      jobs,
    };
  }

  return {
    progress,
    async plan(garden, asked) {
      const asOf = asked ?? (await handedIn(garden)).asOf ?? (await usualDay(garden));
      const { samples } = await samplesOf(store, garden, asOf);
      const options: DayOptions = { asOf };
      orRefuse(
        await store.days.enqueue(
          garden,
          samples.map(({ place, code, source }) => ({ place, code, source })),
          JSON.stringify(options),
        ),
      );
      return progress(garden);
    },
    async step(garden, name) {
      orRefuse(await store.version(garden));
      orRefuse(await store.days[name](garden));
      return progress(garden);
    },
    async made(garden, asked, origin) {
      const { asOf = await usualDay(garden) } = await handedIn(garden);
      const { read, samples } = await samplesOf(store, garden, asOf);
      const results = orRefuse(await store.days.results(garden));
      if (results.length === 0) throw new Refusal('conflict', words.nothingPlanned);
      const kept = new Map(
        keptPlans(results.map(({ body }) => body)).map((each, index) => [results[index]?.place ?? '', each]),
      );
      // Names come from the record as it is now: they can be mended without planning anew.
      const list = samples.flatMap(({ place, code, name, person, neighbourhood }): DaySample[] => {
        const found = kept.get(place);
        if (found === undefined) return [];
        return [
          {
            code,
            ...(person === undefined ? {} : { person }),
            ...(neighbourhood === undefined ? {} : { neighbourhood }),
            place: { ...found.place, name },
            plan: found.plan,
          },
        ];
      });
      const options: PaperOptions = {
        system: asked.units ?? read.units ?? 'metric',
        printed: todayOf(room),
        planned: asOf,
        title: read.garden.name,
        ...(asked.paper === undefined ? {} : { paper: asked.paper }),
        largePrint: asked.largePrint === 'yes',
      };
      return {
        samples: list,
        options,
        handouts: () =>
          list.map(({ code, person, place, plan }) => ({
            place,
            recommendation: plan,
            garden: read.garden.name,
            sampleId: code,
            ...(person === undefined ? {} : { person }),
            ...(asked.contact === undefined ? {} : { contact: asked.contact }),
            url: `${origin}/g/${garden}/place/${place.id}`,
          })),
      };
    },
  };
}
