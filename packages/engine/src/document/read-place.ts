import type { Product } from '../materials/material.ts';
import type { Place } from '../plan/place.ts';
import type { IsoDate } from '../units/si.ts';
import { type Choice, choicesInto } from './choices.ts';
import { type Report, readFields, readList } from './fields.ts';
import { limits } from './limits.ts';
import { measure } from './measure.ts';
import type { Path } from './path.ts';
import { readApplication } from './read-application.ts';
import { readDiseases } from './read-diseases.ts';
import { readPlant } from './read-plant.ts';
import { extentOf } from './read-size.ts';
import { readGround } from './read-soil.ts';
import { readTest } from './read-test.ts';
import { readYearly, yearlyLists } from './read-yearly.ts';
import { problem, sentence } from './report.ts';
import { place as placeSchema } from './schema.ts';
import { usualDepth } from './usual-depth.ts';

type Mutable<T> = { -readonly [K in keyof T]: T[K] };

/** What a place leaves out and its garden says. */
export interface PlaceDefaults {
  readonly id: string;
  readonly today: IsoDate;
  readonly region?: string | undefined;
  readonly certifiedOrganic?: boolean | undefined;
  readonly products: readonly Product[];
  readonly finenessSystem: string;
}

const lists: ReadonlySet<string> = new Set(['tests', 'plants', 'applications', ...yearlyLists]);
const {
  tests: _tests,
  plants: _plants,
  applications: _applications,
  feeds: _feeds,
  harvest: _harvest,
  compost: _compost,
  ...ownShape
} = placeSchema.shape;
/** Fields a dose does not rest on: a place is still planned without them. */
const SPARE = new Set(['note', 'diseases', 'nearOpenWater', 'childrenOrPets', 'certifiedOrganic', 'water']);

/**
 * One place of the document, in SI. A place is left out when something its dose rests on is wrong; a wrong test,
 * plant or application is left out of its place, and the person is told what that means.
 */
export function readPlace(
  typed: unknown,
  at: Path,
  defaults: PlaceDefaults,
  report: Report,
  chosen: Choice[],
  skipped: string[],
): Place | undefined {
  const own =
    typeof typed === 'object' && typed !== null && !Array.isArray(typed)
      ? Object.fromEntries(Object.entries(typed).filter(([key]) => !lists.has(key)))
      : typed;
  const given = (typeof typed === 'object' && typed !== null ? typed : {}) as Record<string, unknown>;
  const named = report.place ?? defaults.id;
  const leaveOut = (): undefined => {
    skipped.push(sentence('document.place-left-out', { place: named }));
    return undefined;
  };
  const { fields, bad } = readFields(ownShape, own, at, report);
  for (const field of bad) {
    if (!SPARE.has(field)) return leaveOut();
    skipped.push(sentence('document.field-left-out', { field: `${field} (${named})` }));
  }
  const name = fields.name;
  if (name === undefined) return leaveOut();
  const choices = choicesInto(chosen, name);
  const before = report.problems.length;
  const kind = fields.kind ?? (fields.pots === undefined ? 'bed' : 'container');
  const container = kind === 'container';
  const situation = fields.situation ?? (container ? 'container' : 'open ground');
  const medium = fields.medium ?? (container ? 'soilless' : 'mineral');
  if (fields.medium === undefined && container) choices.add('medium', 'document.choice-medium', { medium });
  const usual = usualDepth(container, situation);
  const depth = measure(fields.depth, 'length', limits.depth, [...at, 'depth'], report) ?? usual;
  if (fields.depth === undefined && !container)
    choices.add('depth', 'document.choice-depth', { depth: { value: depth, dimension: 'length' } });
  const extent = extentOf(fields, container, depth, at, report);
  const ground = readGround(fields.soil, [...at, 'soil'], report);
  const target = fields.target;
  if (target !== undefined && !inOrder(target))
    report.problems.push(
      problem('document.target-order', { place: name, field: 'target' }, `${target.low} to ${target.high}`, {
        low: target.low,
        high: target.high,
      }),
    );
  if (report.problems.length > before || extent === undefined) return leaveOut();
  if (extent.assumed) {
    if (container)
      choices.add('pots', 'document.choice-pots', { volume: { value: extent.volume ?? 0, dimension: 'volume' } });
    else choices.add('size', 'document.choice-size', { area: { value: extent.area, dimension: 'area' } });
  }

  const place: Mutable<Place> = {
    id: defaults.id,
    name,
    kind,
    situation,
    medium,
    area: extent.area,
    depth,
    ...ground,
    plants: [],
    tests: [],
    applications: [],
  };
  if (extent.volume !== undefined) place.volume = extent.volume;
  if (target !== undefined)
    place.target = { low: target.low, high: target.high, ...(target.aim === undefined ? {} : { aim: target.aim }) };
  if (fields.water !== undefined) {
    const alkalinity = measure(
      fields.water.alkalinity,
      'alkalinity',
      limits.alkalinity,
      [...at, 'water', 'alkalinity'],
      report,
    );
    const perYear = measure(fields.water.perYear, 'waterDepth', limits.waterDepth, [...at, 'water', 'perYear'], report);
    if (alkalinity === undefined) skipped.push(sentence('document.field-left-out', { field: `water (${name})` }));
    else place.water = perYear === undefined ? { alkalinity } : { alkalinity, perYear };
  }
  if (fields.diseases !== undefined) {
    place.diseases = readDiseases(fields.diseases, [...at, 'diseases'], report);
    if (place.diseases.length < fields.diseases.length)
      skipped.push(sentence('document.field-left-out', { field: `diseases (${name})` }));
  }
  for (const flag of ['nearOpenWater', 'childrenOrPets'] as const)
    if (fields[flag] !== undefined) place[flag] = fields[flag] === true || fields[flag] === 'yes';
  const organic = fields.certifiedOrganic ?? defaults.certifiedOrganic;
  if (organic !== undefined) place.certifiedOrganic = organic === true || organic === 'yes';

  place.plants = readList(given.plants, [...at, 'plants'], report).flatMap((each, index) => {
    const plant = readPlant(each, [...at, 'plants', index], report, medium);
    if (plant === undefined) skipped.push(sentence('document.plant-left-out', { plant: plantWord(each), place: name }));
    return plant ?? [];
  });
  place.tests = readList(given.tests, [...at, 'tests'], report).flatMap((each, index) => {
    const test = readTest(
      each,
      [...at, 'tests', index],
      {
        id: `${defaults.id}-test-${index + 1}`,
        today: defaults.today,
        depth: container ? depth : usual,
        region: defaults.region,
        soilless: medium === 'soilless',
      },
      report,
      choices,
    );
    if (test === undefined) {
      const date = (each as { date?: unknown } | null)?.date;
      skipped.push(
        sentence('document.test-left-out', { date: typeof date === 'string' ? date : 'an unknown day', place: name }),
      );
    }
    return test ?? [];
  });
  place.applications = readList(given.applications, [...at, 'applications'], report).flatMap((each, index) => {
    const application = readApplication(each, [...at, 'applications', index], place, defaults, report);
    if (application === undefined) skipped.push(sentence('document.application-left-out', { place: name }));
    return application ?? [];
  });
  const yearly = readYearly(given, at, place, defaults, report, choices, skipped);
  if (Object.keys(yearly).length > 0) place.yearly = yearly;
  return place;
}

const inOrder = (target: { low: number; high: number; aim?: number | undefined }): boolean =>
  target.low < target.high && (target.aim === undefined || (target.aim >= target.low && target.aim <= target.high));

const plantWord = (typed: unknown): string =>
  typeof typed === 'string' ? typed : String((typed as { plant?: unknown } | null)?.plant ?? 'without a name');
