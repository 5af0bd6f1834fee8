import { checkSoilTest } from '../evidence/check-soil-test.ts';
import type { PrintedRate, SoilTest } from '../evidence/soil-test.ts';
import type { IsoDate, Metre } from '../units/si.ts';
import type { Choices } from './choices.ts';
import { type Report, readFields } from './fields.ts';
import { limits } from './limits.ts';
import { measure } from './measure.ts';
import { type Path, pathText } from './path.ts';
import { readChemistry } from './read-chemistry.ts';
import { readNutrients } from './read-nutrients.ts';
import { type TestEntry, test as testSchema } from './schema.ts';

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
  const { date, by } = fields;
  if (bad.size > 0 || date === undefined || by === undefined) return undefined;
  const before = report.problems.length;
  const depth = measure(fields.depth, 'length', limits.depth, [...at, 'depth'], report);
  const region = fields.region ?? defaults.region;
  const test: SoilTest = {
    id: defaults.id,
    date,
    instrument: by === 'color-kit' ? 'colour-kit' : by,
    depth: depth ?? defaults.depth,
    ...(fields.laboratory === undefined ? {} : { laboratory: fields.laboratory }),
    ...(region === undefined ? {} : { region }),
    ...(fields.cores === undefined ? {} : { cores: fields.cores }),
    ...phOf(fields, defaults),
    ...(fields.buffer === undefined ? {} : { buffer: { value: fields.buffer.value, method: fields.buffer.kind } }),
    ...(fields.fizz?.acid === undefined ? {} : { acidFizz: fields.fizz.acid }),
    ...(fields.fizz?.vinegar === undefined ? {} : { vinegarFizz: fields.fizz.vinegar }),
    ...readChemistry(fields, at, report),
    ...bufferCapacityOf(fields, at, report),
    ...printedRateOf(fields, at, report),
    ...readNutrients(fields, at, report),
  };
  if (report.problems.length > before) return undefined;
  const faults = checkSoilTest(test, report.place ?? '', pathText(at), defaults.today);
  report.problems.push(...faults);
  if (faults.length > 0) return undefined;

  // The depth of a pot sample moves nothing, so it is not worth a line.
  if (fields.depth === undefined && !defaults.soilless)
    choices.add('depth', 'document.choice-test-depth', { date, depth: { value: defaults.depth, dimension: 'length' } });
  if (fields.ph !== undefined && fields.ph.in === undefined) choices.add('ph.in', 'document.choice-method', { date });
  if (fields.printedRate !== undefined && fields.printedRate.cce === undefined)
    choices.add('printedRate.cce', 'document.choice-cce');
  return test;
}

type Fields = Partial<TestEntry>;

function phOf(fields: Fields, defaults: TestDefaults): Pick<SoilTest, 'ph'> {
  if (fields.ph === undefined) return {};
  return { ph: { value: fields.ph.value, method: fields.ph.in ?? (defaults.soilless ? 'media-extract' : 'unstated') } };
}

function bufferCapacityOf(fields: Fields, at: Path, report: Report): Pick<SoilTest, 'limeBufferCapacity'> {
  const given = fields.limeBufferCapacity;
  const path = [...at, 'limeBufferCapacity', 'value'];
  const value = measure(given?.value, 'massFraction', limits.bufferCapacity, path, report);
  return given === undefined || value === undefined ? {} : { limeBufferCapacity: { value, kind: given.kind } };
}

function printedRateOf(fields: Fields, at: Path, report: Report): Pick<SoilTest, 'printedRate'> {
  const printed = fields.printedRate;
  if (printed === undefined) return {};
  const path = (name: string): Path => [...at, 'printedRate', name];
  const rate = measure(printed.rate, 'massPerArea', limits.massPerArea, path('rate'), report);
  const depth = measure(printed.depth, 'length', limits.depth, path('depth'), report);
  const cce = measure(printed.cce, 'massFraction', limits.cce, path('cce'), report);
  if (rate === undefined || depth === undefined) return {};
  const printedRate: PrintedRate = {
    rate,
    depth,
    targetPh: printed.target,
    neutralisingValue: cce ?? 1,
    ...(printed.method === undefined ? {} : { method: printed.method }),
  };
  return { printedRate };
}
