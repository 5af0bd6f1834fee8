import { setTimeout } from 'node:timers/promises';
import { sql } from 'kysely';
import { describe, expect, it } from 'vitest';
import type { Came, SamplePlanner, SampleWork, Store } from '../src/index.ts';
import { codes, value, writer } from './kit.ts';
import type { Bench } from './stores.ts';

async function dayOf(store: Store, seed: number, count: number) {
  const { addGarden, id, garden } = writer(seed);
  value(await store.append([addGarden()]));
  const samples = Array.from({ length: count }, (_, n) => ({ place: id(), code: `A${n + 1}`, source: `s${n}` }));
  return { garden, samples };
}

/** Works until nothing is left to do. */
async function workOff(
  stores: readonly Store[],
  garden: string,
  planner: SamplePlanner,
): Promise<[SampleWork, Came][]> {
  const heard: [SampleWork, Came][] = [];
  const told = (work: SampleWork, came: Came) => void heard.push([work, came]);
  const workers = stores.map((store) => store.days.work(planner, { most: 2, pause: 20, told }));
  await until(stores[0] as Store, garden, (states) => states.every((state) => state === 'done' || state === 'failed'));
  for (const worker of workers) await worker.stop();
  return heard;
}

async function until(store: Store, garden: string, enough: (states: readonly string[]) => boolean): Promise<void> {
  for (let left = 1500; left > 0; left--) {
    if (enough((await statesOf(store, garden)).map(([, state]) => state))) return;
    await setTimeout(20);
  }
  throw new Error('the day does not come to its end');
}

const statesOf = async (store: Store, garden: string) =>
  (value(await store.days.progress(garden))?.samples ?? []).map(({ code, state }) => [code, state] as const);

const made: SamplePlanner = async ({ code }) => ({ source: `s${Number(code.slice(1)) - 1}`, body: `plan of ${code}` });

export function daysContract(bench: Bench): void {
  const { open } = bench;
  describe('soil days', () => {
    it('plans every sample once and gives the plans back in check-in order', async () => {
      const store = await open();
      const { garden, samples } = await dayOf(store, 90, 12);
      expect(value(await store.days.progress(garden))).toBeUndefined();
      value(await store.days.enqueue(garden, samples, '{"asOf":"2026-11-25"}'));
      const heard = await workOff([store], garden, made);
      expect(heard.map(([{ code }]) => code).sort()).toEqual(samples.map(({ code }) => code).sort());
      expect(heard.every(([{ options }, came]) => came === 'done' && options === '{"asOf":"2026-11-25"}')).toBe(true);
      expect(value(await store.days.results(garden)).map(({ code, body }) => [code, body])).toEqual(
        samples.map(({ code }) => [code, `plan of ${code}`]),
      );
      // Handed in once more, with one that changed, one that is new and one that is no more.
      const [gone, changed, ...rest] = samples;
      const fresh = { place: writer(91).id(), code: 'A13', source: 's12' };
      const next = [{ ...changed, source: 'new' } as typeof fresh, ...rest, fresh];
      value(await store.days.enqueue(garden, next, '{}'));
      const again = await workOff(
        [store],
        garden,
        async (work) => ({ ...(await made(work)), source: 'x', body: 'x' }) as never,
      );
      expect(again.map(([{ code }]) => code).sort()).toEqual(['A13', 'A2']);
      const results = value(await store.days.results(garden));
      expect(results.map(({ code }) => code)).toEqual(next.map(({ code }) => code));
      expect(results.filter(({ place }) => place === gone?.place)).toEqual([]);
    });

    it('shares a day between several who work on one record', async () => {
      const where = await bench.place();
      const stores =
        bench.kind === 'sqlite' ? [await bench.openAt(where)] : [await bench.openAt(where), await bench.openAt(where)];
      const { garden, samples } = await dayOf(stores[0] as Store, 92, 30);
      value(await (stores[0] as Store).days.enqueue(garden, samples, ''));
      const heard = await workOff(stores, garden, async (work) => {
        await setTimeout(5);
        return made(work);
      });
      expect(heard.map(([{ code }]) => code).sort()).toEqual(samples.map(({ code }) => code).sort());
    });

    it('pauses and goes on', async () => {
      const store = await open();
      const { garden, samples } = await dayOf(store, 93, 8);
      value(await store.days.enqueue(garden, samples, ''));
      value(await store.days.pause(garden));
      let begun = 0;
      const worker = store.days.work(
        (work) => {
          begun++;
          return made(work);
        },
        { most: 2, pause: 20 },
      );
      await setTimeout(200);
      expect(begun).toBe(0);
      expect(value(await store.days.progress(garden))?.paused).toBe(true);
      value(await store.days.resume(garden));
      await until(store, garden, (states) => states.every((state) => state === 'done'));
      await worker.stop();
      expect(begun).toBe(8);
    });

    it('gives up after three failures, says why, and tries again when it is told to', async () => {
      const store = await open();
      const { garden, samples } = await dayOf(store, 94, 3);
      value(await store.days.enqueue(garden, samples, ''));
      const heard = await workOff([store], garden, async (work) => {
        if (work.code === 'A2') throw new Error('no pH at all');
        return made(work);
      });
      expect(heard.filter(([{ code }]) => code === 'A2').map(([, came]) => came)).toEqual(['again', 'again', 'failed']);
      const failed = value(await store.days.progress(garden))?.samples[1];
      expect(failed).toMatchObject({ state: 'failed', tries: 3, error: 'no pH at all' });
      value(await store.days.retry(garden));
      await workOff([store], garden, made);
      expect(value(await store.days.results(garden))).toHaveLength(3);
    });

    it('takes nothing from one who was overtaken, and keeps one plan', async () => {
      const where = await bench.place();
      const [slow, quick] = [await bench.openAt(where), await bench.openAt(where)];
      const { garden, samples } = await dayOf(slow, 95, 1);
      value(await slow.days.enqueue(garden, samples, ''));
      let release = (): void => undefined;
      const released = new Promise<void>((resolve) => {
        release = resolve;
      });
      const late: Came[] = [];
      const worker = slow.days.work(
        async (work) => {
          await released;
          return { ...(await made(work)), source: 's0', body: 'too late' } as never;
        },
        { most: 1, pause: 20, told: (_, came) => void late.push(came) },
      );
      await until(slow, garden, ([state]) => state === 'running');
      // Its time is up, or the program that was thought dead is started again.
      await workOff([quick], garden, made);
      release();
      await worker.stop();
      expect(late).toEqual(['late']);
      expect(value(await quick.days.results(garden)).map(({ body }) => body)).toEqual(['plan of A1']);
    });

    it('gives up a plan that cannot be stored, and goes on with the others', async () => {
      const store = await open();
      const { garden, samples } = await dayOf(store, 97, 3);
      value(await store.days.enqueue(garden, samples, ''));
      // No database stores a plan without a body.
      await workOff([store], garden, async (work) =>
        work.code === 'A2' ? { source: 's1', body: null as unknown as string } : made(work),
      );
      expect((await statesOf(store, garden)).map(([, state]) => state)).toEqual(['done', 'failed', 'done']);
    });

    it('keeps a sample that was taken out and put back while a worker found it gone', async () => {
      const store = await open();
      const { garden, samples } = await dayOf(store, 98, 1);
      value(await store.days.enqueue(garden, samples, ''));
      let release = (): void => undefined;
      const released = new Promise<void>((resolve) => {
        release = resolve;
      });
      const late: Came[] = [];
      const worker = store.days.work(
        async () => {
          await released;
          return undefined;
        },
        { most: 1, pause: 20, told: (_, came) => void late.push(came) },
      );
      await until(store, garden, ([state]) => state === 'running');
      value(await store.days.enqueue(garden, [], ''));
      value(await store.days.enqueue(garden, samples, ''));
      const stopped = worker.stop();
      release();
      await stopped;
      expect(late).toEqual(['late']);
      await workOff([store], garden, made);
      expect(value(await store.days.results(garden)).map(({ body }) => body)).toEqual(['plan of A1']);
    });

    it.runIf(bench.kind === 'postgres')('plans what has waited for months', async () => {
      const where = await bench.place();
      const store = await bench.openAt(where);
      const { garden, samples } = await dayOf(store, 99, 2);
      value(await store.days.enqueue(garden, samples, ''));
      const raw = bench.raw(where);
      await sql`update sorrel_queue.job set created_on = created_on - interval '100 days',
        start_after = start_after - interval '100 days', keep_until = keep_until - interval '100 days'`.execute(raw.db);
      await raw.close();
      await workOff([store], garden, made);
      expect(value(await store.days.results(garden))).toHaveLength(2);
    });

    it('refuses a day of a garden that is not there', async () => {
      const store = await open();
      expect(codes(await store.days.enqueue(writer(96).garden, [], ''))).toEqual(['store.no-garden']);
    });
  });
}
