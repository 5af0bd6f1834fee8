import type { ReadGarden } from '@sorrel/engine/document';
import type { Arrangement } from '@sorrel/engine/placing';
import { type Garden, type GardenPlan, type Place, planGarden, type Recommendation } from '@sorrel/engine/plan';
import type {
  AnyPlant,
  ArrangementOptions,
  DayOptions,
  DaySample,
  Handout,
  HandoutOptions,
  PageOptions,
  PrintOptions,
  Seen,
} from '@sorrel/print';

/** A garden as it was read, and its plan. They belong together: a product of one is the very same in the other. */
export interface Made {
  readonly read: ReadGarden;
  readonly plan: GardenPlan;
}

export interface LabelWork {
  readonly places: readonly Place[];
  readonly options: PrintOptions;
  /** Address of the garden's screens, without the slash at its end. */
  readonly base: string;
}

// Typesetting brings its fonts along, so it is loaded when something is first printed.
const printer = () => import('@sorrel/print');

/** What takes longer than a request may keep all others waiting. What is given and what comes back is plain data. */
export const jobs = {
  /** Every figure with its working, first dressings held to the forecast. */
  plan: async (read: ReadGarden): Promise<Made> => ({
    read,
    plan: planGarden(read.garden, { explain: true, forecast: true }),
  }),
  workSheet: async (work: {
    readonly garden: Garden;
    readonly plan: GardenPlan;
    readonly options: PrintOptions;
  }): Promise<Uint8Array> => (await printer()).workSheet(work.garden, work.plan, work.options),
  handouts: async (work: {
    readonly list: readonly Handout[];
    readonly options: HandoutOptions;
  }): Promise<Uint8Array> => (await printer()).handouts(work.list, work.options),
  usable: async (work: {
    readonly list: readonly Pick<Handout, 'place' | 'recommendation'>[];
    readonly options: PageOptions;
  }): Promise<Uint8Array> => (await printer()).usablePages(work.list, work.options),
  plant: async (work: {
    readonly plant: AnyPlant;
    readonly garden: Garden;
    readonly plan: GardenPlan;
    readonly options: PageOptions;
  }): Promise<Uint8Array> => (await printer()).plantPage(work.plant, work.garden, work.plan, work.options),
  symptoms: async (work: { readonly seen: Seen; readonly options: PageOptions }): Promise<Uint8Array> =>
    (await printer()).symptomsPage(work.seen, work.options),
  /** One sample of a soil day, with nobody else drawing on the stock. */
  sample: async ({ garden, place }: { readonly garden: Garden; readonly place: Place }): Promise<Recommendation> => {
    const [plan] = planGarden({ ...garden, places: [place] }, { explain: true, forecast: true }).recommendations;
    if (plan === undefined) throw new RangeError(`no plan for ${place.name}`);
    return plan;
  },
  daySummary: async (work: {
    readonly samples: readonly DaySample[];
    readonly options: DayOptions;
  }): Promise<Uint8Array> => (await printer()).daySummary(work.samples, work.options),
  labels: async ({ places, options, base }: LabelWork): Promise<Uint8Array> =>
    (await printer()).labels(places, { ...options, url: ({ id }) => `${base}/place/${id}`, shortId }),
  arrangement: async (work: {
    readonly arrangement: Arrangement;
    readonly options: ArrangementOptions;
  }): Promise<Uint8Array> => (await printer()).arrangementSheet(work.arrangement, work.options),
};

/** The end of an id, which differs most between places made at one time. */
const shortId = ({ id }: Place): string => id.slice(-6);

export type Jobs = typeof jobs;
export type JobName = keyof Jobs;
export type Given<N extends JobName> = Parameters<Jobs[N]>[0];
export type Result<N extends JobName> = Awaited<ReturnType<Jobs[N]>>;

/** Between the server and its threads. */
export interface Order<N extends JobName = JobName> {
  readonly job: N;
  readonly given: Given<N>;
}
export type Delivery = { readonly result: unknown } | { readonly failed: string };
