import type { SoilTest } from '../evidence/soil-test.ts';
import { type Cation, chargeOfFraction, chargeOfMassPerArea } from './cation.ts';
import type { Report } from './fields.ts';
import { type Limit, limits } from './limits.ts';
import { measure, measureAny } from './measure.ts';
import { particles } from './particles.ts';
import { type Path, pathText } from './path.ts';
import { problem } from './report.ts';
import type { TestEntry } from './schema.ts';

type Mutable<T> = { -readonly [K in keyof T]: T[K] };
type Entry = Partial<TestEntry>;

const shares = ['baseSaturation', 'organicMatter', 'organicCarbon', 'carbonate', 'lead'] as const;
const cations = ['aluminium', 'calcium', 'magnesium', 'potassium', 'sodium'] as const;

/** The chemistry and particle sizes of a report, in SI. Anything wrong is in the report and left out here. */
export function readChemistry(entry: Entry, at: Path, report: Report): Partial<Mutable<SoilTest>> {
  const found: Partial<Mutable<SoilTest>> = {};
  const set = <K extends keyof SoilTest>(key: K, value: SoilTest[K] | undefined): void => {
    if (value !== undefined) found[key] = value;
  };
  const plain = (name: keyof Entry & string, dimension: Parameters<typeof measure>[1], limit: Limit) =>
    measure(entry[name] as string | undefined, dimension, limit, [...at, name], report);

  const acidity = measureAny(
    entry.acidity,
    ['chargePerMass', 'chargePerSoilVolume'],
    limits.charge,
    [...at, 'acidity'],
    report,
  );
  if (acidity !== undefined) set(acidity.dimension === 'chargePerMass' ? 'acidity' : 'acidityByVolume', acidity.value);
  set('cec', plain('cec', 'chargePerMass', limits.charge));
  set('cecBasis', entry.cecBasis);
  for (const name of cations) set(name, cationOf(name, entry, at, report));
  for (const name of shares) set(name, plain(name, 'massFraction', limits.share));
  set('conductivity', plain('conductivity', 'conductivity', limits.conductivity));
  set('scoopedDensity', plain('scoopedDensity', 'massPerVolume', limits.density));
  set('texture', entry.texture);
  const sizes = particles(
    {
      sand: plain('sand', 'massFraction', limits.share),
      silt: plain('silt', 'massFraction', limits.share),
      clay: plain('clay', 'massFraction', limits.share),
    },
    at,
    report,
  );
  return sizes === undefined ? found : { ...found, ...sizes };
}

/** An extractable cation as charge, given as charge, as weight for a weight of soil, or for an acre of it. */
function cationOf(name: Cation, entry: Entry, at: Path, report: Report): number | undefined {
  const american = name === 'aluminium' ? entry.aluminum : undefined;
  if (american !== undefined && entry.aluminium !== undefined) {
    const where = { place: report.place, field: pathText([...at, 'aluminium']) };
    report.problems.push(problem('document.both-spellings', where, american, { other: 'aluminum' }));
  }
  const field = american === undefined ? name : 'aluminum';
  const kinds = ['chargePerMass', 'massFraction', 'massPerArea'] as const;
  const given = measureAny(entry[name] ?? american, kinds, limits.charge, [...at, field], report);
  if (given?.dimension === 'massFraction') return chargeOfFraction(name, given.value);
  if (given?.dimension === 'massPerArea') return chargeOfMassPerArea(name, given.value);
  return given?.value;
}
