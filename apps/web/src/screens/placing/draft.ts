import type { GardenDocument } from '@sorrel/engine/document';

type PlantEntry = NonNullable<GardenDocument['places'][number]['plants']>[number];
export type Light = '' | 'sun' | 'part shade' | 'shade';
/** `1` to `3` name one season. */
export type When = 'all' | '1' | '2' | '3';
/** What becomes of a plant that grows in a place now. */
export type Now = 'stays' | 'grew' | 'gone';

/** One plant wanted, as typed. */
export interface WishDraft {
  readonly plant: PlantEntry;
  readonly amount: string;
  /** A unit of area, or `plants` when they are counted. */
  readonly unit: string;
  /** Distance between two plants, where they are counted. */
  readonly apart: string;
  readonly apartUnit: string;
  readonly when: When;
  readonly light: Light;
  readonly pots: '' | 'only' | 'never';
  /** Id of the place it must grow in; empty when Sorrel chooses. */
  readonly where: string;
}

export interface PlaceDraft {
  readonly light: Light;
  /** By name of the plant; those not named go by the almanac. */
  readonly now: Readonly<Record<string, Now>>;
}

/** Everything on the screen that the gardener said. */
export interface Draft {
  readonly seasons: 1 | 2 | 3;
  readonly wishes: readonly WishDraft[];
  /** By id of the place in the record. */
  readonly places: Readonly<Record<string, PlaceDraft>>;
}

export const COUNTED = 'plants';
export const emptyDraft: Draft = { seasons: 1, wishes: [], places: {} };
export const emptyPlace: PlaceDraft = { light: '', now: {} };
export const plantName = (plant: PlantEntry): string => (typeof plant === 'string' ? plant : plant.plant);
export const areaUnits = { metric: ['m2', COUNTED], us: ['sq ft', COUNTED] } as const;
export const apartUnits = { metric: ['cm', 'm'], us: ['in', 'ft'] } as const;

export const newWish = (plant: PlantEntry, units: 'metric' | 'us'): WishDraft => ({
  plant,
  amount: '',
  unit: areaUnits[units][0],
  apart: '',
  apartUnit: apartUnits[units][0],
  when: 'all',
  light: '',
  pots: '',
  where: '',
});

const METRES: Readonly<Record<string, number>> = { cm: 0.01, m: 1, in: 0.0254, ft: 0.3048 };
/** A number as people write it; NaN when it is none or not above 0. */
export function positive(text: string): number {
  const value = Number(text.trim().replace(',', '.'));
  return text.trim() !== '' && value > 0 && Number.isFinite(value) ? value : Number.NaN;
}

/** Area of a wish as the document writes it; undefined when something is missing. Counted plants stand in a square each. */
export function areaOf({ amount, unit, apart, apartUnit }: WishDraft): string | undefined {
  const much = positive(amount);
  if (Number.isNaN(much)) return undefined;
  if (unit !== COUNTED) return `${much} ${unit}`;
  const side = positive(apart) * (METRES[apartUnit] ?? Number.NaN);
  return Number.isNaN(side) ? undefined : `${Number((much * side * side).toPrecision(6))} m2`;
}

/** What is wrong with a wish, by field. */
export function faultsOf(wish: WishDraft): ReadonlySet<'amount' | 'apart'> {
  const faults = new Set<'amount' | 'apart'>();
  if (Number.isNaN(positive(wish.amount))) faults.add('amount');
  if (wish.unit === COUNTED && Number.isNaN(positive(wish.apart))) faults.add('apart');
  return faults;
}

/** A place as the screen knows it. */
export interface Ground {
  readonly id: string;
  readonly name: string;
  readonly area: number;
  readonly plants: readonly PlantEntry[];
  /** Whether a plant stays by the almanac. */
  stays(plant: PlantEntry): boolean;
}

/** What becomes of a plant in a place: as said, else by the almanac. */
export const nowOf = (ground: Ground, plant: PlantEntry, place: PlaceDraft = emptyPlace): Now =>
  place.now[plantName(plant)] ?? (ground.stays(plant) ? 'stays' : 'grew');

/**
 * The wishes document that a draft says (`docs/placing.md`), for `readWishes`. Wishes without an area are left out. What
 * is pinned to a place that is gone is free to go anywhere.
 */
export function documentOf(draft: Draft, grounds: readonly Ground[]): object {
  const usable = draft.wishes.flatMap((wish) => {
    const area = areaOf(wish);
    return area === undefined ? [] : [{ wish, area, seasons: seasonsOf(wish, draft.seasons) }];
  });
  return {
    seasons: draft.seasons,
    wishes: usable.map(({ wish: { plant, light, pots }, area, seasons }) => ({
      plant,
      area,
      ...seasons,
      ...(light === '' ? {} : { light }),
      ...(pots === '' ? {} : { pots }),
    })),
    places: grounds.map((ground) => {
      const place = draft.places[ground.id] ?? emptyPlace;
      const share = `${Number((ground.area / Math.max(1, ground.plants.length)).toPrecision(6))} m2`;
      const are = (now: Now) => ground.plants.filter((plant) => nowOf(ground, plant, place) === now);
      const fixed = usable.filter(({ wish }) => wish.where === ground.id);
      return {
        place: ground.name,
        ...(place.light === '' ? {} : { light: place.light }),
        stays: are('stays').map((plant) => ({ plant, area: share })),
        ...(fixed.length === 0
          ? {}
          : { fixed: fixed.map(({ wish: { plant }, area, seasons }) => ({ plant, area, ...seasons })) }),
        history: are('grew').map((plant) => ({ grew: plantName(plant), yearsAgo: 1 })),
      };
    }),
  };
}

/** A season beyond those that are placed counts as every season. */
const seasonsOf = ({ when }: WishDraft, seasons: number): { seasons?: number[] } =>
  when === 'all' || Number(when) > seasons ? {} : { seasons: [Number(when)] };

const key = (garden: string) => `sorrel.wishes.${garden}`;

/** The list as this device last had it; an empty one where there is none or it cannot be read. */
export function keptDraft(garden: string, storage: Pick<Storage, 'getItem'> | undefined = storageOf()): Draft {
  try {
    const kept = JSON.parse(storage?.getItem(key(garden)) ?? 'null') as Partial<Draft> | null;
    const wishes = Array.isArray(kept?.wishes) ? kept.wishes : [];
    return {
      seasons: kept?.seasons === 2 || kept?.seasons === 3 ? kept.seasons : 1,
      wishes: wishes.flatMap((wish) =>
        typeof wish?.plant === 'string' || typeof wish?.plant?.plant === 'string'
          ? [{ ...newWish(wish.plant, 'metric'), ...wish }]
          : [],
      ),
      places: typeof kept?.places === 'object' && kept.places !== null ? kept.places : {},
    };
  } catch {
    return emptyDraft;
  }
}

/** Keeps the list on this device, where the browser lets it. */
export function keepDraft(garden: string, draft: Draft, storage: Pick<Storage, 'setItem'> | undefined = storageOf()) {
  try {
    storage?.setItem(key(garden), JSON.stringify(draft));
  } catch {
    // A full or forbidden storage loses the list with the page, which is better than losing the page.
  }
}

function storageOf(): Storage | undefined {
  try {
    return globalThis.localStorage;
  } catch {
    return undefined;
  }
}
