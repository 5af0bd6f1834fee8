import type { GardenDocument } from '@sorrel/engine/document';

export type PlaceEntry = GardenDocument['places'][number];
type PlantEntry = NonNullable<PlaceEntry['plants']>[number];

/** What stands in the form, as typed. */
export interface Draft {
  readonly name: string;
  readonly kind: 'bed' | 'plot' | 'container';
  readonly size: string;
  readonly count: string;
  readonly volume: string;
  readonly depth: string;
  readonly situation: 'open ground' | 'around plants' | 'lawn';
  readonly plants: readonly PlantEntry[];
  readonly texture: string;
  readonly organicMatter: string;
  readonly nearOpenWater: boolean;
  readonly childrenOrPets: boolean;
  readonly note: string;
}

export const emptyDraft: Draft = {
  name: '',
  kind: 'bed',
  size: '',
  count: '',
  volume: '',
  depth: '',
  situation: 'open ground',
  plants: [],
  texture: '',
  organicMatter: '',
  nearOpenWater: false,
  childrenOrPets: false,
  note: '',
};

const isYes = (value: boolean | 'yes' | 'no' | undefined): boolean => value === true || value === 'yes';

/** The form of a place that is there already. */
export function draftOf(entry: PlaceEntry): Draft {
  const kind = entry.kind ?? (entry.pots === undefined ? 'bed' : 'container');
  return {
    name: entry.name,
    kind,
    size: entry.size ?? entry.area ?? '',
    count: entry.pots === undefined ? '' : String(entry.pots.count),
    volume: entry.pots?.volume ?? '',
    depth: entry.depth ?? '',
    situation: entry.situation === undefined || entry.situation === 'container' ? 'open ground' : entry.situation,
    plants: entry.plants ?? [],
    texture: entry.soil?.texture ?? '',
    organicMatter: entry.soil?.organicMatter ?? '',
    nearOpenWater: isYes(entry.nearOpenWater),
    childrenOrPets: isYes(entry.childrenOrPets),
    note: entry.note ?? '',
  };
}

/** Two lengths say a size, one figure an area. */
const isSize = (text: string): boolean => /\d\s*[^\d]*\s*[x×*]\s*\d/i.test(text);

/**
 * The entry a form says. What the form does not ask for stays as it was before.
 *
 * @param before the place's own content, without its tests and applications
 */
export function entryOf(draft: Draft, before: Partial<PlaceEntry> = {}): PlaceEntry {
  const text = (value: string) => (value.trim() === '' ? undefined : value.trim());
  const container = draft.kind === 'container';
  const size = container ? undefined : text(draft.size);
  const volume = text(draft.volume);
  const { tests: _tests, applications: _applications, ...kept } = before;
  const soil = { ...kept.soil, texture: text(draft.texture), organicMatter: text(draft.organicMatter) };
  const entry = {
    ...kept,
    name: draft.name.trim(),
    kind: draft.kind,
    size: size !== undefined && isSize(size) ? size : undefined,
    area: size !== undefined && !isSize(size) ? size : undefined,
    pots: container && volume !== undefined ? { count: Number(text(draft.count) ?? '1'), volume } : undefined,
    depth: text(draft.depth),
    situation: container || draft.situation === 'open ground' ? undefined : draft.situation,
    plants: draft.plants.length === 0 ? undefined : draft.plants,
    soil: Object.values(soil).every((value) => value === undefined) ? undefined : present(soil),
    nearOpenWater: draft.nearOpenWater || undefined,
    childrenOrPets: draft.childrenOrPets || undefined,
    note: text(draft.note),
  };
  return present(entry) as PlaceEntry;
}

const present = <T extends object>(value: T): T =>
  Object.fromEntries(Object.entries(value).filter(([, each]) => each !== undefined)) as T;
