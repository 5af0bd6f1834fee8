import { materialOf } from '@sorrel/almanac/materials';
import { fromSi, parseQuantity, readUnit, unitOf } from '@sorrel/engine/units';
import { type Numbered, takenBack } from '@sorrel/store/record';
import type { Content } from '../../data/write.ts';
import { splitQuantity } from '../../kit/quantity.tsx';

type Material = Content<'material'>;

/** What stands on the bag, else what it is: the name by which the plan knows a material at hand. */
export const materialName = ({ name, material }: Material): string => name ?? materialOf(material)?.name ?? material;

/** kg; undefined for nothing, and for what is no weight. */
function massOf(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const read = parseQuantity(text, 'mass');
  return read.ok ? read.value : undefined;
}

/**
 * A material with another amount at hand, in the unit it was written in; never less than nothing.
 *
 * @param change kg, negative for what was used
 * @returns undefined when nothing is written of what is at hand
 */
export function withStock(entry: Material, change: number): Material | undefined {
  const before = massOf(entry.onHand);
  if (before === undefined) return undefined;
  const unit = splitQuantity(entry.onHand, 'kg').unit;
  const left = Math.max(0, before + change);
  // Sums such as `5 lb 4 oz` have no one unit: they go on in kilograms.
  const single = readUnit(unit).state === 'unit';
  const value = fromSi(left, unitOf(single ? unit : 'kg'));
  return { ...entry, onHand: `${Number(value.toFixed(3))} ${single ? unit : 'kg'}` };
}

/** A material after some of it was used; undefined when its stock is not kept, or the amount is no weight. */
export function afterUse(entry: Material, used: string): Material | undefined {
  const mass = massOf(used);
  return mass === undefined ? undefined : withStock(entry, -mass);
}

/**
 * What ticking off a task took from the stock: the correction that was written together with it, right behind it.
 *
 * @returns the material's id in the record and the weight in kg; undefined when nothing was taken
 */
export function takenWith(
  entries: readonly Numbered[],
  task: { readonly id: string; readonly number: number },
): { readonly material: string; readonly mass: number } | undefined {
  const gone = takenBack(entries);
  const next = entries.find(({ number }) => number === task.number + 1)?.entry;
  if (next?.action !== 'correct' || next.kind !== 'material' || gone.has(next.id)) return undefined;
  const before = entries.findLast(
    ({ number, entry }) =>
      number < task.number &&
      (entry.action === 'add' || entry.action === 'correct') &&
      entry.kind === 'material' &&
      (entry.action === 'add' ? entry.id : entry.thing) === next.thing &&
      !gone.has(entry.id),
  )?.entry;
  if (before === undefined || before.action === 'undo' || before.action === 'remove' || before.kind !== 'material')
    return undefined;
  const [had, has] = [massOf(before.content.onHand), massOf(next.content.onHand)];
  return had === undefined || has === undefined || had <= has ? undefined : { material: next.thing, mass: had - has };
}
