import { createContext, type ReactNode, use, useCallback, useMemo } from 'react';
import { useLocation, useSearch } from 'wouter';
import { type Entry, type GardenRecord, NoAnswer, Refused } from '../data/garden-store.ts';
import { useStore } from '../data/store-context.tsx';
import type { PlannedGarden } from '../engine/garden-plan.ts';
import { type Speaker, speakerFor } from '../engine/speaker.ts';
import { usePlan } from '../engine/use-plan.ts';
import { useToast } from '../kit/toast.tsx';
import { label } from '../words/label.ts';
import { useUnits } from './units.tsx';

export interface GardenSession {
  readonly record: GardenRecord;
  /** The garden read and planned: at once by the quick way, soon after held to the forecast. Of a soil day only the sample in view. */
  readonly planned: PlannedGarden;
  readonly speaker: Speaker;
  /**
   * Writes entries, draws the garden anew and offers to undo.
   *
   * @param done what was done, for the message with the undo button
   * @returns whether the store took them; if not, the person has been told why
   */
  write(entries: readonly Entry[], done: string): Promise<boolean>;
  /** Takes one entry back. */
  takeBack(entry: string): Promise<boolean>;
}

const GardenContext = createContext<GardenSession | undefined>(undefined);

/** The garden whose screens are open. */
export function useGarden(): GardenSession {
  const session = use(GardenContext);
  if (session === undefined) throw new Error('This screen stands outside a garden.');
  return session;
}

interface Props {
  readonly record: GardenRecord;
  readonly reload: () => Promise<void>;
  readonly children: ReactNode;
}

export function GardenProvider({ record, reload, children }: Props) {
  const store = useStore();
  const toast = useToast();
  const units = useUnits(record.document.units);
  const [here] = useLocation();
  const asked = useSearch();
  const planned = usePlan(useToPlan(record, inView(here, asked)));
  const speaker = useMemo(() => speakerFor(units, record.document.money), [units, record.document.money]);
  const garden = record.id;

  const attempt = useCallback(
    async (work: () => Promise<void>): Promise<boolean> => {
      try {
        await work();
        await reload();
        return true;
      } catch (error) {
        toast({ text: reasonOf(error) });
        return false;
      }
    },
    [reload, toast],
  );
  const takeBack = useCallback(
    async (entry: string) => {
      const done = await attempt(() => store.undo(garden, entry));
      if (done) toast({ text: label('web.undone') });
      return done;
    },
    [attempt, store, garden, toast],
  );
  const write = useCallback(
    async (entries: readonly Entry[], done: string) => {
      const taken = await attempt(() => store.append(garden, entries));
      if (taken)
        toast({
          text: done,
          undo: async () => {
            // Last first, so that nothing ever stands in the record without what it belongs to.
            const undone = await attempt(async () => {
              for (const entry of [...entries].reverse()) await store.undo(garden, entry.id);
            });
            if (undone) toast({ text: label('web.undone') });
          },
        });
      return taken;
    },
    [attempt, store, garden, toast],
  );
  const session = useMemo(
    () => ({ record, planned, speaker, write, takeBack }),
    [record, planned, speaker, write, takeBack],
  );
  return <GardenContext value={session}>{children}</GardenContext>;
}

/** The place that the address is about. */
const inView = (here: string, asked: string): string | undefined =>
  /^\/(?:place|test|home-reading)\/([^/]+)/.exec(here)?.[1] ?? new URLSearchParams(asked).get('place') ?? undefined;

/**
 * What is planned: the whole garden; of a soil day, where every new reading would plan hundreds of samples anew, only
 * the sample in view. The server plans the day as a whole.
 */
function useToPlan(record: GardenRecord, place: string | undefined): GardenRecord {
  return useMemo(() => {
    const { document, from } = record;
    if (document.soilDay === undefined) return record;
    const only = from.places.findIndex(({ id }) => id === place);
    return {
      ...record,
      document: { ...document, places: document.places.filter((_, index) => index === only) },
      from: { ...from, places: from.places.filter((_, index) => index === only) },
    };
  }, [record, place]);
}

function reasonOf(error: unknown): string {
  if (error instanceof NoAnswer) return label('web.no-answer');
  if (error instanceof Refused) return label('web.refused', { reason: error.problems[0]?.message ?? error.message });
  return label('web.refused', { reason: error instanceof Error ? error.message : String(error) });
}
