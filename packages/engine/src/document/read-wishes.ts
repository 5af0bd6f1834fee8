import type { Problem } from '../derivation/problem.ts';
import type { PlaceRules, PlacingInput, Wish } from '../placing/input.ts';
import type { Place, PlantRange } from '../plan/place.ts';
import { type Report, readFields, readList } from './fields.ts';
import { limits } from './limits.ts';
import { measure } from './measure.ts';
import { type Path, pathText } from './path.ts';
import { readPlant } from './read-plant.ts';
import { problem } from './report.ts';
import { placeRules, wish, wishesDocument } from './wishes-schema.ts';

export interface ReadWishes {
  readonly seasons: PlacingInput['seasons'];
  readonly wishes: readonly Wish[];
  readonly rules: readonly PlaceRules[];
  readonly problems: readonly Problem[];
}

const { wishes: _wishes, places: _places, ...headShape } = wishesDocument.shape;
const { plant: _plant, ...wishShape } = wish.shape;
const { stays: _stays, fixed: _fixed, ...rulesShape } = placeRules.shape;
const staysShape = { area: wishShape.area.optional() };
const fixedShape = { ...staysShape, seasons: wishShape.seasons };
type Part = { readonly plant: PlantRange; readonly area?: number };

/**
 * Reads what is to grow in a garden. Never throws: a wish or a rule with something wrong in it is left out and reported.
 *
 * @param document what the JSON or YAML text holds
 * @param places of the garden, which the rules name
 */
export function readWishes(document: unknown, places: readonly Place[]): ReadWishes {
  const problems: Problem[] = [];
  const report: Report = { problems };
  const typed = isGroup(document) ? document : {};
  if (!isGroup(document)) problems.push(problem('document.empty', { field: 'wishes' }, document));
  const { wishes: list, places: ruled, ...head } = typed;
  const { fields } = readFields(headShape, head, [], report);
  const seasons = (fields.seasons ?? 1) as PlacingInput['seasons'];
  const wishes = readList(list, ['wishes'], report).flatMap(
    (each, at) => readWish(each, ['wishes', at], seasons, report) ?? [],
  );
  const rules = readList(ruled, ['places'], report).flatMap(
    (each, at) => readRules(each, ['places', at], places, seasons, report) ?? [],
  );
  return { seasons, wishes, rules, problems };
}

const isGroup = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function readWish(typed: unknown, at: Path, seasons: number, report: Report): Wish | undefined {
  const { plant: named, ...rest } = isGroup(typed) ? typed : { plant: undefined };
  const { fields, bad } = readFields(wishShape, isGroup(typed) ? rest : typed, at, report);
  if (bad.size > 0) return undefined;
  const plant = readPlant(named, [...at, 'plant'], report);
  const area = measure(fields.area, 'area', limits.area, [...at, 'area'], report);
  if (plant === undefined || area === undefined || !inside(fields.seasons, seasons, [...at, 'seasons'], report))
    return undefined;
  return {
    plant,
    area,
    ...(fields.seasons === undefined ? {} : { seasons: fields.seasons }),
    ...(fields.stays === undefined ? {} : { stays: fields.stays === true || fields.stays === 'yes' }),
    ...(fields.light === undefined ? {} : { light: fields.light }),
    ...(fields.pots === undefined ? {} : { pots: fields.pots }),
  };
}

/** Seasons beyond those that are placed are reported. */
function inside(named: readonly number[] | undefined, seasons: number, at: Path, report: Report): boolean {
  const beyond = named?.find((season) => season > seasons);
  if (beyond === undefined) return true;
  report.problems.push(
    problem('placing.no-such-season', { place: report.place, field: pathText(at) }, beyond, { seasons }),
  );
  return false;
}

function readRules(
  typed: unknown,
  at: Path,
  places: readonly Place[],
  seasons: number,
  report: Report,
): PlaceRules | undefined {
  const group = isGroup(typed) ? typed : {};
  const { stays, fixed, ...rest } = group;
  const { fields, bad } = readFields(rulesShape, isGroup(typed) ? rest : typed, at, report);
  if (bad.size > 0 || fields.place === undefined) return undefined;
  const name = fields.place.toLowerCase();
  const place = places.find((each) => each.name.toLowerCase() === name);
  if (place === undefined) {
    const known = places.map((each) => each.name).join(', ');
    report.problems.push(
      problem('placing.no-such-place', { field: pathText([...at, 'place']) }, fields.place, { known }),
    );
    return undefined;
  }
  const mine: Report = { ...report, place: place.name };
  const parts = (list: unknown, field: 'stays' | 'fixed') =>
    readList(list, [...at, field], mine).flatMap(
      (each, index) => readPart(each, [...at, field, index], field, seasons, mine) ?? [],
    );
  return {
    place: place.id,
    ...(fields.light === undefined ? {} : { light: fields.light }),
    ...(fields.history === undefined ? {} : { history: fields.history }),
    ...(stays === undefined ? {} : { stays: parts(stays, 'stays') }),
    fixed: parts(fixed, 'fixed'),
  };
}

/** A plant that stays or is fixed; a bare name stands for as much as fits. */
function readPart(typed: unknown, at: Path, field: 'stays' | 'fixed', seasons: number, report: Report) {
  if (typeof typed === 'string') {
    const plant = readPlant(typed, at, report);
    return plant === undefined ? undefined : { plant };
  }
  const { plant: named, ...rest } = isGroup(typed) ? typed : { plant: undefined };
  const entry = isGroup(typed) ? rest : typed;
  // What stays is there in every season, so only what is fixed names some.
  const fixed = field === 'fixed' ? readFields(fixedShape, entry, at, report) : undefined;
  const { fields, bad } = fixed ?? readFields(staysShape, entry, at, report);
  const plant = bad.size > 0 ? undefined : readPlant(named, [...at, 'plant'], report);
  const area = measure(fields.area, 'area', limits.area, [...at, 'area'], report);
  const wanted = fixed?.fields.seasons;
  if (plant === undefined || (fields.area !== undefined && area === undefined)) return undefined;
  if (!inside(wanted, seasons, [...at, 'seasons'], report)) return undefined;
  const part: Part & { readonly seasons?: readonly number[] } = {
    plant,
    ...(area === undefined ? {} : { area }),
    ...(wanted === undefined ? {} : { seasons: wanted }),
  };
  return part;
}
