import { type FertilizerRow, fertilizers } from '@sorrel/almanac/fertilizers';
import { materialOf } from '@sorrel/almanac/materials';
import { type NitrogenForm, nitrogenFormOf } from '@sorrel/almanac/nitrogen-forms';
import { chargeOfFertilizer, chargeOfMaterial, type NitrogenFeed } from '../materials/fertilizer-charge.ts';
import type { Product } from '../materials/material.ts';
import { findMaterial } from '../materials/product.ts';
import type { Place } from '../plan/place.ts';
import { nearest } from '../units/nearest.ts';
import type { KgPerM2 } from '../units/si.ts';
import type { Choices } from './choices.ts';
import { missing } from './field-problems.ts';
import { type Report, readFields } from './fields.ts';
import { limits } from './limits.ts';
import { measureAny } from './measure.ts';
import { type Path, pathText } from './path.ts';
import { problem } from './report.ts';
import { feed as feedSchema } from './schema.ts';

/** Nitrogen given in a year. */
export interface Nitrogen {
  /** kg N/m². */
  readonly amount: KgPerM2;
  readonly charge: number;
}

/** A fertilizer given every year, as its nitrogen and the charge it counts with. */
export function readFeed(
  typed: unknown,
  at: Path,
  place: Pick<Place, 'area'>,
  own: readonly Product[],
  report: Report,
  choices: Choices,
): Nitrogen | undefined {
  const { fields, bad } = readFields(feedSchema.shape, typed, at, report);
  if (bad.size > 0) return undefined;
  const { material, form, nitrogen, amount } = fields;
  const where = (field: string) => ({ place: report.place, field: pathText([...at, field]) });
  if (material === undefined && form === undefined) {
    report.problems.push(missing(where('material'), undefined, 'urea'));
    return undefined;
  }
  if ((nitrogen === undefined) === (amount === undefined)) {
    report.problems.push(
      nitrogen === undefined
        ? missing(where('nitrogen'), undefined, '10 g/m2')
        : problem('document.feed-twice', where('amount'), amount),
    );
    return undefined;
  }
  // A form says all that is asked; a name beside it need not be known unless its nitrogen must be worked out.
  const known = form !== undefined && amount === undefined ? undefined : named(material, own, at, report);
  if (known === undefined && (form === undefined || amount !== undefined)) return undefined;
  const field = nitrogen === undefined ? 'amount' : 'nitrogen';
  const limit = nitrogen === undefined ? limits.feed : limits.nitrogen;
  const given = measureAny(nitrogen ?? amount, ['massPerArea', 'mass'], limit, [...at, field], report);
  if (given === undefined) return undefined;
  const perArea = given.dimension === 'mass' ? given.value / place.area : given.value;
  if (known?.memory) choices.add('feeds', 'document.choice-feed', { material: known.name });
  return {
    amount: nitrogen === undefined ? perArea * (known?.feed.share ?? 0) : perArea,
    charge: form === undefined ? (known?.feed.charge ?? 0) : nitrogenFormOf(FORMS[form]).k,
  };
}

const FORMS: Readonly<Record<NonNullable<(typeof feedSchema)['_output']['form']>, NitrogenForm>> = {
  ammonium: 'ammonium',
  urea: 'urea',
  organic: 'urea',
  'ammonium nitrate': 'ammonium nitrate',
  nitrate: 'nitrate',
  map: 'map',
  dap: 'dap',
};

interface Known {
  readonly name: string;
  readonly feed: NitrogenFeed;
  readonly memory: boolean;
}

const plain = (name: string): string =>
  name
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ')
    .replaceAll('sulph', 'sulf');

/** Fertilizers by key and by name. */
const byName = new Map<string, FertilizerRow>(
  fertilizers.flatMap((row) => [
    [plain(row.key), row],
    [plain(row.name), row],
  ]),
);

function named(name: string | undefined, own: readonly Product[], at: Path, report: Report): Known | undefined {
  const where = { place: report.place, field: pathText([...at, 'material']) };
  if (name === undefined) {
    report.problems.push(missing(where, undefined, 'urea'));
    return undefined;
  }
  const mine = own.find((product) => product.name.toLowerCase() === name.trim().toLowerCase());
  const wanted = mine === undefined ? name : mine.material;
  const fertilizer = byName.get(plain(wanted));
  const found = findMaterial(wanted);
  const row = found.ok ? materialOf(found.value.key) : undefined;
  const feed = fertilizer === undefined ? row && chargeOfMaterial(row) : chargeOfFertilizer(fertilizer);
  if (feed !== undefined) return { name, feed, memory: (fertilizer ?? row)?.basis === 'memory' };
  if (fertilizer !== undefined || row !== undefined)
    report.problems.push(
      row?.role === 'organic'
        ? problem('document.feed-is-compost', where, name)
        : problem('document.feed-no-nitrogen', where, name),
    );
  else
    report.problems.push(
      problem('document.unknown-feed', where, name, { nearest: nearest(plain(name), byName.keys()) ?? 'urea' }),
    );
  return undefined;
}
