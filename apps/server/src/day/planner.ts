import type { Product } from '@sorrel/engine/materials';
import type { Place, Recommendation } from '@sorrel/engine/plan';
import type { SamplePlanner } from '@sorrel/store';
import type { Room } from '../room.ts';
import { type DayInRecord, samplesOf } from './samples.ts';

/** What is kept of a planned sample. */
export interface KeptPlan {
  readonly place: Place;
  readonly plan: Recommendation;
}

/** What a day is handed in with. */
export interface DayOptions {
  readonly asOf: string;
}

/** Plans one sample on a thread, from the record as it is at that moment. */
export function samplePlanner({ store, workshop }: Pick<Room, 'store' | 'workshop'>): SamplePlanner {
  // Three hundred samples of one day are planned in a row: the record is read again only when it has changed.
  let last: { readonly key: string; readonly day: Promise<DayInRecord> } | undefined;
  return async ({ garden, place, options }) => {
    const { asOf } = JSON.parse(options) as DayOptions;
    const version = await store.version(garden);
    if (!version.ok) throw new Error(version.problems[0]?.message);
    const key = `${garden} ${version.value} ${asOf}`;
    if (last?.key !== key) last = { key, day: samplesOf(store, garden, asOf) };
    const { read, samples } = await last.day.catch((error: unknown) => {
      last = undefined;
      throw error;
    });
    const sample = samples.find((each) => each.place === place);
    if (sample === undefined) return undefined;
    if (sample.read === undefined) throw new Error(sample.wrong);
    const plan = await workshop.run('sample', { garden: read.garden, place: sample.read });
    const kept: KeptPlan = { place: sample.read, plan };
    return { source: sample.source, body: JSON.stringify(kept) };
  };
}

/**
 * Reads kept plans back. One product is one object again in all of them, as it was when they were made: whoever tells
 * of it says its grade once.
 */
export function keptPlans(bodies: readonly string[]): readonly KeptPlan[] {
  const products = new Map<string, Product>();
  const one = (product: Product): Product => {
    const text = JSON.stringify(product);
    const known = products.get(text);
    if (known === undefined) products.set(text, product);
    return known ?? product;
  };
  return bodies.map((body) => {
    const { place, plan } = JSON.parse(body) as KeptPlan;
    const applications = plan.applications.map((each) => ({ ...each, product: one(each.product) }));
    return { place, plan: { ...plan, applications } };
  });
}
