import type { Problem } from '../derivation/problem.ts';
import type { Garden, Place, Settings } from '../plan/place.ts';
import type { UnitSystem } from '../units/dimension.ts';
import type { IsoDate } from '../units/si.ts';
import { type Choice, choicesInto } from './choices.ts';
import { type Report, readFields, readList } from './fields.ts';
import { readMaterial } from './read-material.ts';
import { readPlace } from './read-place.ts';
import { readSettings } from './read-settings.ts';
import { problem, sentence, shown } from './report.ts';
import { gardenDocument } from './schema.ts';

export interface ReadGarden {
  readonly garden: Garden;
  /** Units the document asks for, when it does. */
  readonly units?: UnitSystem;
  readonly problems: readonly Problem[];
  /** What was left out because of the problems and what that means, in sentences. */
  readonly skipped: readonly string[];
  /** What nobody wrote and was taken for granted. */
  readonly choices: readonly Choice[];
}

const { places: _places, materials: _materials, ...headShape } = gardenDocument.shape;

/**
 * Reads a garden document. Never throws: what is wrong is reported with place, field, value and fix, and the rest is
 * served. A garden without a usable place comes back empty, with the reason.
 *
 * @param document what the JSON or YAML text holds
 * @param defaults `today`, used when the document gives no `asOf`; an `asOf` given here goes before the document's own
 */
export function readGarden(
  document: unknown,
  defaults: { readonly today: IsoDate; readonly asOf?: IsoDate },
): ReadGarden {
  const problems: Problem[] = [];
  const skipped: string[] = [];
  const choices: Choice[] = [];
  const report: Report = { problems };
  const typed = entries(document, problems);
  const head = Object.fromEntries(Object.entries(typed).filter(([key]) => key !== 'places' && key !== 'materials'));
  const { fields, bad } =
    problems.length > 0 ? { fields: {}, bad: new Set<string>() } : readFields(headShape, head, [], report);
  for (const field of bad) skipped.push(sentence('document.field-left-out', { field }));
  const settings: Settings = readSettings(
    defaults.asOf === undefined ? fields : { ...fields, asOf: defaults.asOf },
    defaults.today,
    report,
    choicesInto(choices),
    skipped,
  );

  const products = readList(typed.materials, ['materials'], report).flatMap((each, index) => {
    const product = readMaterial(each, ['materials', index], settings.finenessSystem, report);
    if (product === undefined)
      skipped.push(sentence('document.material-left-out', { material: nameOf(each, 'material') ?? index + 1 }));
    return product ?? [];
  });

  const names = new Set<string>();
  const places: Place[] = [];
  for (const [index, each] of readList(typed.places, ['places'], report).entries()) {
    const name = nameOf(each, 'name') ?? `places[${index}]`;
    const mine: Report = { place: name, problems };
    if (names.has(name)) problems.push(problem('document.same-name', { place: name, field: 'name' }, name));
    names.add(name);
    const id = `place-${index + 1}`;
    const place = readPlace(
      each,
      [],
      {
        id,
        today: settings.today,
        region: settings.region,
        certifiedOrganic: fields.certifiedOrganic === true || fields.certifiedOrganic === 'yes' ? true : undefined,
        products,
        finenessSystem: settings.finenessSystem,
      },
      mine,
      choices,
      skipped,
    );
    if (place !== undefined) places.push(place);
  }
  if (problems.length === 0 && places.length === 0)
    problems.push(problem('document.no-places', { field: 'places' }, typed.places));
  const garden: Garden = { name: fields.garden ?? '', places, products, settings, currencySymbol: fields.money ?? '' };
  return { garden, ...(fields.units === undefined ? {} : { units: fields.units }), problems, skipped, choices };
}

function entries(document: unknown, problems: Problem[]): Record<string, unknown> {
  if (document === undefined || document === null || document === '')
    problems.push(problem('document.empty', { field: 'garden' }, document));
  else if (typeof document !== 'object' || Array.isArray(document))
    problems.push(problem('document.not-a-garden', { field: 'garden' }, document, { found: shown(document) }));
  else return document as Record<string, unknown>;
  return {};
}

function nameOf(typed: unknown, field: string): string | undefined {
  if (typeof typed !== 'object' || typed === null) return typeof typed === 'string' ? typed : undefined;
  const value = (typed as Record<string, unknown>)[field];
  return typeof value === 'string' && value.trim() !== '' ? value.trim() : undefined;
}
