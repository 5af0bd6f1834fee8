import { type ReadGarden, readGarden } from '@sorrel/engine/document';
import type { GardenPlan } from '@sorrel/engine/plan';
import type { UnitSystem } from '@sorrel/engine/units';
import { orRefuse } from './http/store-refusals.ts';
import { type Room, todayOf } from './room.ts';
import type { Made } from './workshop/jobs.ts';

export interface Asked {
  /** The day planned for; the garden's own, else today. */
  readonly asOf?: string | undefined;
  /** The garden's own, else metric. */
  readonly units?: UnitSystem | undefined;
}

export interface Known {
  /** Its places carry the ids they have in the record. */
  readonly read: ReadGarden;
  readonly units: UnitSystem;
}

export interface Planned extends Known {
  /** Every figure with its working, first dressings held to the forecast. */
  readonly plan: GardenPlan;
}

export interface Planner {
  /** A garden of the store, read. */
  read(garden: string, asked: Asked): Promise<Known>;
  /** A garden of the store, read and planned. */
  plan(garden: string, asked: Asked): Promise<Planned>;
}

/** Plans kept in memory; with their working each is some hundred kB. */
const room = 40;

/**
 * Plans gardens as the command line does, and keeps what it planned: holding doses to the forecast takes some tenths of
 * a second a garden, on another thread. A garden is planned anew when its version, the day or the day asked for is another. Requests that
 * arrive while a plan is made wait for that one.
 */
export function createPlanner({ store, now, workshop }: Pick<Room, 'store' | 'now' | 'workshop'>): Planner {
  const kept = new Map<string, Promise<Made>>();

  async function known(garden: string, { asOf }: Asked): Promise<ReadGarden> {
    const { document, from } = orRefuse(await store.assemble(garden));
    const read = readGarden(document, { today: todayOf({ now }), ...(asOf === undefined ? {} : { asOf }) });
    // The reader numbers places as the document has them, from 1, and leaves out those it cannot use.
    const ids = new Map(from.places.map(({ id }, index) => [`place-${index + 1}`, id]));
    const places = read.garden.places.map((place) => ({ ...place, id: ids.get(place.id) ?? place.id }));
    return { ...read, garden: { ...read.garden, places } };
  }

  const made = async (garden: string, asked: Asked): Promise<Made> => workshop.run('plan', await known(garden, asked));

  const unitsOf = ({ units }: Asked, read: ReadGarden): UnitSystem => units ?? read.units ?? 'metric';

  return {
    async read(garden, asked) {
      const read = await known(garden, asked);
      return { read, units: unitsOf(asked, read) };
    },
    async plan(garden, asked) {
      // Asked for before the garden is put together: what is written in between can only make the plan newer than its
      // version, and the next request then plans again.
      const version = orRefuse(await store.version(garden));
      const key = JSON.stringify([garden, version, todayOf({ now }), asked.asOf]);
      const found = kept.get(key) ?? made(garden, asked);
      kept.delete(key);
      kept.set(key, found);
      const oldest = kept.keys().next().value;
      if (kept.size > room && oldest !== undefined) kept.delete(oldest);
      try {
        const { read, plan } = await found;
        return { read, plan, units: unitsOf(asked, read) };
      } catch (error) {
        kept.delete(key);
        throw error;
      }
    },
  };
}
