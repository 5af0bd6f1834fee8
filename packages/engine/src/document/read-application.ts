import type { Product } from '../materials/material.ts';
import type { PastApplication, Place } from '../plan/place.ts';
import { type Report, readFields } from './fields.ts';
import { limits } from './limits.ts';
import { measureAny } from './measure.ts';
import { type Path, pathText } from './path.ts';
import { productNamed } from './read-material.ts';
import { problem } from './report.ts';
import { application as applicationSchema } from './schema.ts';

/**
 * Something that was spread on a place earlier, in the currency of the account: kg CaCO3 equivalent per m² of bed, as
 * it will act.
 */
export function readApplication(
  typed: unknown,
  at: Path,
  place: Pick<Place, 'area'>,
  garden: { readonly today: string; readonly products: readonly Product[]; readonly finenessSystem: string },
  report: Report,
): PastApplication | undefined {
  const { fields, bad } = readFields(applicationSchema.shape, typed, at, report);
  const { date, material, amount } = fields;
  if (bad.size > 0 || date === undefined || material === undefined) return undefined;
  if (date > garden.today) {
    const where = { place: report.place, field: pathText([...at, 'date']) };
    report.problems.push(problem('document.date-ahead', where, date, { today: garden.today }));
    return undefined;
  }
  const given = measureAny(amount, ['massPerArea', 'mass'], limits.massPerArea, [...at, 'amount'], report);
  const product = productNamed(material, garden.products, garden.finenessSystem, [...at, 'material'], report);
  if (given === undefined || product === undefined) return undefined;
  const perArea = given.dimension === 'mass' ? given.value / place.area : given.value;
  if (perArea > limits.massPerArea.most) {
    const where = { place: report.place, field: pathText([...at, 'amount']) };
    report.problems.push(problem('document.too-large', where, amount, { high: limits.massPerArea.mostText }));
    return undefined;
  }
  return { date, material: product.material, currency: perArea * product.currency * product.efficiency };
}
