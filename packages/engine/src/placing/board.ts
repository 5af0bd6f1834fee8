import type { RotationRow } from '@sorrel/almanac/rotations';
import type { Message } from '../derivation/message.ts';
import type { Place, PlantRange } from '../plan/place.ts';
import type { SquareMetre } from '../units/si.ts';
import { LIGHTS, type PlaceRules, type PlacingInput, type Wish } from './input.ts';
import { type Move, type Moves, movesOf } from './moves.ts';
import { type Range, rangeIn } from './ranges.ts';
import { familyOf, rotationFor, stays } from './rotation.ts';

/** One wish in whole pieces. */
export interface Item {
  readonly plant: PlantRange;
  readonly family: string;
  readonly stays: boolean;
  /** Pieces wanted in each season. */
  readonly demand: readonly number[];
  readonly wish: Wish;
}

/** Why an item may not go to a place. */
export type Bar = 'light' | 'pots' | 'ph' | 'unknown';

/** One place in whole pieces, with the pH values it can have. */
export interface Spot {
  readonly place: Place;
  readonly rules: PlaceRules | undefined;
  /** Pieces that perennials do not hold. */
  readonly room: number;
  /** Open moves from sour to limy, only those that what must be here bears. */
  readonly moves: readonly Move[];
  readonly reach: Moves;
  /** First and last move that suits each item; undefined with a bar. */
  readonly suits: readonly ({ readonly from: number; readonly to: number } | undefined)[];
  readonly bars: readonly (Bar | undefined)[];
  /** Items that are here whatever the pH, because the gardener said so and no pH suits all that must be here. */
  readonly exempt: ReadonlySet<number>;
  /** Plants that must be here: perennials, then fixed ones. */
  readonly musts: readonly PlantRange[];
  readonly residents: readonly { readonly plant: PlantRange; readonly area: SquareMetre }[];
  /** What must be here shares no pH, or none that can be reached. */
  readonly clash: 'no common range' | 'out of reach' | undefined;
  /** Pieces of each item that must be here, by season. */
  readonly fixed: ReadonlyMap<number, readonly number[]>;
  /** Years since each family grew here. */
  readonly since: ReadonlyMap<string, number>;
}

/** The garden as the programme sees it: whole pieces of ground, seasons from 0. */
export interface Board {
  readonly seasons: number;
  readonly piece: SquareMetre;
  readonly spots: readonly Spot[];
  readonly items: readonly Item[];
  rotation(spot: Spot, family: string): RotationRow;
}

/** Smallest piece of ground given to a plant when nobody says (own rule). */
const PIECE = 0.1;
const EPSILON = 1e-9;

/**
 * Lays the garden out in whole pieces and works out, for each place, the pH values it can have and what they cost.
 *
 * @throws RangeError for an area or a piece that is not above zero, a season outside 1 to `seasons`, or a rule for an unknown place
 */
export function boardOf(input: PlacingInput): Board {
  checkInput(input);
  const { seasons, places } = input;
  const piece = input.piece ?? Math.min(PIECE, ...places.map(({ area }) => area));
  const items = itemsOf(input, piece);
  const rules = new Map((input.rules ?? []).map((rule) => [rule.place, rule]));
  const unfixed = items.map(({ demand }) => [...demand]);
  const spots = places.map((place) => spotOf(place, rules.get(place.id), items, unfixed, input, piece));
  const rows = new Map<string, RotationRow>();
  return {
    seasons,
    piece,
    spots,
    items: items.map((item, index) => {
      const demand = item.demand.map((wanted, season) =>
        Math.max(
          wanted,
          spots.reduce((sum, { fixed }) => sum + (fixed.get(index)?.[season] ?? 0), 0),
        ),
      );
      return { ...item, demand };
    }),
    rotation({ place }, family) {
      const key = `${family} ${place.diseases?.join(',') ?? ''}`;
      let row = rows.get(key);
      if (row === undefined) {
        row = rotationFor(family, place.diseases);
        rows.set(key, row);
      }
      return row;
    },
  };
}

function checkInput({ places, wishes, rules, seasons, piece }: PlacingInput): void {
  if (piece !== undefined && !(piece > 0)) throw new RangeError(`piece must be above 0 m², got ${piece}`);
  if (places.some(({ area }) => !(area > 0))) throw new RangeError('every place needs an area above 0 m²');
  const known = new Set(places.map(({ id }) => id));
  for (const { place } of rules ?? []) if (!known.has(place)) throw new RangeError(`no place has the id ${place}`);
  const named = [...wishes, ...(rules ?? []).flatMap(({ fixed }) => fixed ?? [])];
  for (const { plant, area, seasons: wanted } of named) {
    if (area !== undefined && !(area > 0))
      throw new RangeError(`${plant.name}: the area must be above 0 m², got ${area}`);
    for (const season of wanted ?? [])
      if (!Number.isInteger(season) || season < 1 || season > seasons)
        throw new RangeError(`${plant.name}: season must be 1 to ${seasons}, got ${season}`);
  }
}

const up = (area: number, piece: number): number => Math.max(1, Math.ceil(area / piece - EPSILON));
const down = (area: number, piece: number): number => Math.floor(area / piece + EPSILON);

function itemsOf({ wishes, rules = [], places, seasons }: PlacingInput, piece: number): Item[] {
  const all: Wish[] = [...wishes];
  // What is fixed and not wished for is a wish for exactly that.
  for (const { place, fixed = [] } of rules)
    for (const each of fixed)
      if (!all.some(({ plant }) => plant.key === each.plant.key)) {
        const area = each.area ?? places.find(({ id }) => id === place)?.area ?? piece;
        all.push({ plant: each.plant, area, ...(each.seasons === undefined ? {} : { seasons: each.seasons }) });
      }
  return all.map((wish) => {
    const { plant } = wish;
    const staying = wish.stays ?? stays(plant);
    const demand = Array.from({ length: seasons }, (_, season) =>
      staying || wish.seasons === undefined || wish.seasons.includes(season + 1) ? up(wish.area, piece) : 0,
    );
    return { plant, family: wish.family ?? familyOf(plant), stays: staying, demand, wish };
  });
}

function spotOf(
  place: Place,
  rules: PlaceRules | undefined,
  items: readonly Item[],
  unfixed: number[][],
  { products, settings, seasons }: PlacingInput,
  piece: number,
): Spot {
  const residents = residentsOf(place, rules);
  const held = residents.reduce((sum, { area }) => sum + area, 0);
  const room = Math.max(0, down(place.area - held, piece));
  const fixed = fixedOf(rules, items, unfixed, room, seasons, piece);
  const musts = [
    ...residents.map(({ plant }) => plant),
    ...[...fixed.keys()].map((item) => (items[item] as Item).plant),
  ];
  const ranges = items.map(({ plant }) => rangeIn(place, plant));
  const mustRanges = musts.map((plant) => rangeIn(place, plant));
  const own = place.target;
  const all: Range[] = own === undefined ? [...ranges, ...mustRanges] : [...ranges, ...mustRanges, own];
  const reach = movesOf(place, all, products, settings);
  const holding = own === undefined ? mustRanges : [own];
  const low = Math.max(...holding.map((range) => range.low));
  const high = Math.min(...holding.map((range) => range.high));
  const allowed = reach.open.filter(({ ph }) => ph >= low - EPSILON && ph <= high + EPSILON);
  const clash =
    allowed.length > 0 || holding.length === 0 ? undefined : low > high ? 'no common range' : 'out of reach';
  // Nothing is moved for plants that no pH can please; they stay as they are.
  const moves = clash === undefined ? allowed : reach.open.filter(({ direction }) => direction === 'none').slice(0, 1);
  const exempt = new Set<number>();
  const suits: Spot['suits'][number][] = [];
  const bars: (Bar | undefined)[] = [];
  items.forEach((item, index) => {
    const { from, to } = span(moves, ranges[index] as Range);
    const bar = barOf(place, rules, item) ?? (from <= to ? undefined : moves.length === 0 ? 'unknown' : 'ph');
    suits.push(bar === undefined ? { from, to } : undefined);
    bars.push(bar);
    if (bar !== undefined && fixed.has(index)) exempt.add(index);
  });
  return {
    place,
    rules,
    room,
    moves,
    reach,
    suits,
    bars,
    exempt,
    musts,
    residents,
    clash,
    fixed,
    since: sinceOf(rules),
  };
}

/** Perennials of a place: as its rules say, else those among its plants that stay, each with an equal share of it. */
function residentsOf(place: Place, rules: PlaceRules | undefined): Spot['residents'] {
  const { area, plants } = place;
  if (rules?.stays !== undefined)
    return rules.stays.map((each) => ({ plant: each.plant, area: Math.min(each.area ?? area, area) }));
  return plants.filter(stays).map((plant) => ({ plant, area: area / plants.length }));
}

/** First and last move that a range holds. */
function span(moves: readonly Move[], { low, high }: Range): { from: number; to: number } {
  let from = 0;
  while (from < moves.length && (moves[from] as Move).ph < low - EPSILON) from++;
  let to = moves.length - 1;
  while (to >= 0 && (moves[to] as Move).ph > high + EPSILON) to--;
  return { from, to };
}

function barOf(place: Place, rules: PlaceRules | undefined, { wish }: Item): Bar | undefined {
  if (wish.pots !== undefined && (wish.pots === 'only') !== (place.kind === 'container')) return 'pots';
  return wish.light !== undefined &&
    rules?.light !== undefined &&
    LIGHTS.indexOf(rules.light) > LIGHTS.indexOf(wish.light)
    ? 'light'
    : undefined;
}

function fixedOf(
  rules: PlaceRules | undefined,
  items: readonly Item[],
  /** Pieces of each wish that no place has been fixed for yet, by season; taken from here. */
  unfixed: readonly number[][],
  room: number,
  seasons: number,
  piece: number,
): Map<number, number[]> {
  const left = new Array<number>(seasons).fill(room);
  const found = new Map<number, number[]>();
  for (const { plant, area, seasons: named } of rules?.fixed ?? []) {
    const index = items.findIndex((item) => item.plant.key === plant.key);
    const item = items[index];
    if (item === undefined) continue;
    const pieces = found.get(index) ?? new Array<number>(seasons).fill(0);
    const wanted = (season: number) => item.stays || named === undefined || named.includes(season + 1);
    const most = Math.min(...left.filter((_, season) => wanted(season)));
    for (let season = 0; season < seasons; season++) {
      if (!wanted(season)) continue;
      const free = item.stays ? most : (left[season] ?? 0);
      const open = unfixed[index]?.[season] ?? 0;
      const size = Math.min(free, area === undefined ? open : up(area, piece));
      pieces[season] = (pieces[season] ?? 0) + size;
      left[season] = (left[season] ?? 0) - size;
      (unfixed[index] as number[])[season] = Math.max(0, open - size);
    }
    found.set(index, pieces);
  }
  return found;
}

function sinceOf(rules: PlaceRules | undefined): Map<string, number> {
  const since = new Map<string, number>();
  for (const { grew, yearsAgo } of rules?.history ?? []) {
    const family = familyOf({ key: grew, name: grew });
    since.set(family, Math.min(yearsAgo, since.get(family) ?? Number.POSITIVE_INFINITY));
  }
  return since;
}

/** Whether what grew here before keeps a family away in a season, from 0. */
export function restsFrom(board: Board, spot: Spot, family: string, season: number): boolean {
  const years = spot.since.get(family);
  return years !== undefined && years + season < board.rotation(spot, family).years;
}

/** Why nothing sourer or sweeter can be had in a place, for a range it cannot reach. */
export const closedFor = ({ place, reach }: Spot, plant: PlantRange): Message | undefined => {
  const here = reach.present;
  if (here === undefined) return reach.noRaise;
  const { low } = rangeIn(place, plant);
  return here < low ? reach.noRaise : reach.noLower;
};
