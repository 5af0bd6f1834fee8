import type { SoilTest } from '../evidence/soil-test.ts';
import { checkSoilTest } from '../evidence/check-soil-test.ts';
import type { IsoDate, Metre } from '../units/si.ts';
import { type Cation, chargeOfFraction, chargeOfMassPerArea } from './cation.ts';
import type { Choices } from './choices.ts';
import { type Report, readFields } from './fields.ts';
import { type Path, pathText } from './issue.ts';
import { limits } from './limits.ts';
import { measure, measureAny } from './measure.ts';
import { particles } from './particles.ts';
import { problem } from './report.ts';
import { test as testSchema } from './schema.ts';

type Mutable<T> = { -readonly [K in keyof T]: T[K] };

/** What a test leaves out and its place or garden says. */
export interface TestDefaults {
  readonly id: string;
  readonly today: IsoDate;
  readonly depth: Metre;
  readonly region?: string | undefined;
  readonly soilless: boolean;
}

/**
 * One soil test of the document, in SI. A test with anything wrong in it is not used at all: a dose must not rest on
 * half a report.
 *
 * @returns the test, or `undefined` with the reasons in the report
 */
export function readTest(
  typed: unknown,
  at: Path,
  defaults: TestDefaults,
  report: Report,
  choices: Choices,
): SoilTest | undefined {
  const { fields, bad } = readFields(testSchema.shape, typed, at, report);
  if (bad.size > 0 || fields.date === undefined || fields.by === undefined) return undefined;
  const before = report.problems.length;
  const field = (name: string): Path => [...at, name];
  if (fields.date > defaults.today)
    report.problems.push(
      problem('document.date-ahead', { place: report.place, field: pathText(field('date')) }, fields.date, {
        today: defaults.today,
      }),
    );
  const depth = measure(fields.depth, 'length', limits.depth, field('depth'), report);
  const test: Mutable<SoilTest> = {
    id: defaults.id,
    date: fields.date,
    instrument: fields.by === 'color-kit' ? 'colour-kit' : fields.by,
    depth: depth ?? defaults.depth,
  };
  if (fields.depth === undefined) choices.add('depth', 'document.choice-test-depth', { date: fields.date, depth: { value: defaults.depth, dimension: 'length' } });
  if (fields.laboratory !== undefined) test.laboratory = fields.laboratory;
  const region = fields.region ?? defaults.region;
  if (region !== undefined) test.region = region;
  if (fields.cores !== undefined) test.cores = fields.cores;
  if (fields.ph !== undefined) {
    const method = fields.ph.in ?? (defaults.soilless ? 'media-extract' : 'unstated');
    if (fields.ph.in === undefined) choices.add('ph.in', 'document.choice-method', { date: fields.date });
    test.ph = { value: fields.ph.value, method };
  }
  if (fields.buffer !== undefined) test.buffer = { value: fields.buffer.value, method: fields.buffer.kind };

  const charge = (name: 'acidity' | 'cec') => measure(fields[name], 'chargePerMass', limits.charge, field(name), report);
  const acidity = fields.acidity === undefined ? undefined : measureAny(fields.acidity, ['chargePerMass', 'chargePerSoilVolume'], limits.charge, field('acidity'), report);
  if (acidity?.dimension === 'chargePerMass') test.acidity = acidity.value;
  if (acidity?.dimension === 'chargePerSoilVolume') test.acidityByVolume = acidity.value;
  const cec = charge('cec');
  if (cec !== undefined) test.cec = cec;
  if (fields.cecBasis !== undefined) test.cecBasis = fields.cecBasis;
  if (fields.aluminium !== undefined && fields.aluminum !== undefined)
    report.problems.push(
      problem('document.both-spellings', { place: report.place, field: pathText(field('aluminium')) }, fields.aluminum, {
        other: 'aluminum',
      }),
    );
  const cations = { ...fields, aluminium: fields.aluminium ?? fields.aluminum };
  for (const name of ['aluminium', 'calcium', 'magnesium', 'potassium', 'sodium'] as const) {
    const written = name === 'aluminium' && fields.aluminium === undefined ? 'aluminum' : name;
    const value = cationOf(name, cations[name], field(written), report);
    if (value !== undefined) test[name] = value;
  }
  for (const name of ['baseSaturation', 'organicMatter', 'organicCarbon', 'carbonate'] as const) {
    const value = measure(fields[name], 'massFraction', limits.share, field(name), report);
    if (value !== undefined) test[name] = value;
  }
  if (fields.texture !== undefined) test.texture = fields.texture;
  const sizes = particles(
    {
      sand: measure(fields.sand, 'massFraction', limits.share, field('sand'), report),
      silt: measure(fields.silt, 'massFraction', limits.share, field('silt'), report),
      clay: measure(fields.clay, 'massFraction', limits.share, field('clay'), report),
    },
    at,
    report,
  );
  if (sizes !== undefined) Object.assign(test, sizes);
  if (fields.fizz?.acid !== undefined) test.acidFizz = fields.fizz.acid;
  if (fields.fizz?.vinegar !== undefined) test.vinegarFizz = fields.fizz.vinegar;
  if (fields.limeBufferCapacity !== undefined) {
    const { value: text, kind } = fields.limeBufferCapacity;
    const value = measure(text, 'massFraction', limits.bufferCapacity, [...field('limeBufferCapacity'), 'value'], report);
    if (value !== undefined) test.limeBufferCapacity = { value, kind };
  }
  const conductivity = measure(fields.conductivity, 'conductivity', limits.conductivity, field('conductivity'), report);
  if (conductivity !== undefined) test.conductivity = conductivity;
  const scooped = measure(fields.scoopedDensity, 'massPerVolume', limits.density, field('scoopedDensity'), report);
  if (scooped !== undefined) test.scoopedDensity = scooped;
  const lead = measure(fields.lead, 'massFraction', limits.lead, field('lead'), report);
  if (lead !== undefined) test.lead = lead;
  if (fields.printedRate !== undefined) {
    const printed = fields.printedRate;
    const inside = (name: string): Path => [...field('printedRate'), name];
    const rate = measure(printed.rate, 'massPerArea', limits.massPerArea, inside('rate'), report);
    const rateDepth = measure(printed.depth, 'length', limits.depth, inside('depth'), report);
    const cce = measure(printed.cce, 'massFraction', limits.cce, inside('cce'), report);
    if (printed.cce === undefined) choices.add('printedRate.cce', 'document.choice-cce');
    if (rate !== undefined && rateDepth !== undefined)
      test.printedRate = {
        rate,
        depth: rateDepth,
        targetPh: printed.target,
        neutralisingValue: cce ?? 1,
        ...(printed.method === undefined ? {} : { method: printed.method }),
      };
  }
  if (report.problems.length > before) return undefined;
  const checked = checkSoilTest(test, at.length === 0 ? '' : pathText(at));
  for (const each of checked)
    report.problems.push(report.place === undefined ? each : { ...each, place: report.place });
  return checked.length === 0 ? test : undefined;
}

/** An extractable cation as charge, given as charge or as weight for a weight (or an acre) of soil. */
function cationOf(name: Cation, text: string | undefined, at: Path, report: Report): number | undefined {
  const found = measureAny(text, ['chargePerMass', 'massFraction', 'massPerArea'], limits.charge, at, report);
  if (found === undefined) return undefined;
  if (found.dimension === 'massFraction') return chargeOfFraction(name, found.value);
  if (found.dimension === 'massPerArea') return chargeOfMassPerArea(name, found.value);
  return found.value;
}
