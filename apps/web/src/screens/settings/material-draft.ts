import type { MaterialRow } from '@sorrel/almanac/materials';
import { readGarden } from '@sorrel/engine/document';
import type { Product } from '@sorrel/engine/materials';
import type { Content } from '../../data/write.ts';
import { joinQuantity, splitQuantity } from '../../kit/quantity.tsx';
import { label, type WebCode } from '../../words/label.ts';
import { numberOf } from '../test/draft.ts';

export type MaterialEntry = Content<'material'>;
export type LabelField =
  | 'cce'
  | 'moisture'
  | 'efficiency'
  | 'purity'
  | 'iron'
  | 'aluminium'
  | 'calcium'
  | 'magnesium'
  | 'density'
  | 'onHand';
interface Typed {
  readonly value: string;
  readonly unit: string;
}
export interface MaterialDraft {
  readonly material: string;
  readonly name: string;
  readonly figures: Readonly<Partial<Record<LabelField, Typed>>>;
  readonly sieves: readonly { readonly screen: string; readonly passes: string }[];
  readonly bag: Typed;
  readonly price: string;
}

/** Label figures that mean something for a material, in the order in which labels print them. */
export function labelFields(row: MaterialRow): readonly LabelField[] {
  if (row.role === 'acidifying') {
    if (row.iron !== undefined) return ['iron', 'purity', 'density'];
    if (row.aluminium !== undefined) return ['aluminium', 'purity', 'density'];
    return ['purity', 'density'];
  }
  if (row.role === 'liming') return ['cce', 'moisture', 'efficiency', 'calcium', 'magnesium', 'density'];
  return ['cce', 'moisture', 'density'];
}

export const unitsOf = (field: LabelField, massUnits: readonly string[]): readonly string[] =>
  field === 'density' ? ['kg/L', 'g/cm³', 'lb/cu ft'] : field === 'onHand' ? massUnits : ['%'];

export function draftOf(entry: MaterialEntry | undefined, massUnits: readonly string[]): MaterialDraft {
  const mass = massUnits[0] ?? 'kg';
  const fields: LabelField[] = [
    'cce',
    'moisture',
    'efficiency',
    'purity',
    'iron',
    'aluminium',
    'calcium',
    'magnesium',
    'density',
    'onHand',
  ];
  const figures = Object.fromEntries(
    fields.flatMap((field) => {
      const text = field === 'aluminium' ? (entry?.aluminium ?? entry?.aluminum) : entry?.[field];
      return text === undefined ? [] : [[field, splitQuantity(text, unitsOf(field, massUnits)[0] ?? '')]];
    }),
  );
  const sieves = Object.entries(entry?.passing ?? {}).map(([screen, share]) => ({
    screen,
    passes: splitQuantity(share, '%').value,
  }));
  return {
    material: entry?.material ?? '',
    name: entry?.name ?? '',
    figures,
    sieves: sieves.length > 0 ? sieves : [{ screen: '', passes: '' }],
    bag: splitQuantity(entry?.bag?.size, mass),
    price: entry?.bag?.price === undefined ? '' : String(entry.bag.price),
  };
}

export function entryOf(draft: MaterialDraft, fields: readonly LabelField[], note?: string): MaterialEntry {
  const passing = Object.fromEntries(
    draft.sieves.flatMap(({ screen, passes }) =>
      screen.trim() === '' && passes.trim() === '' ? [] : [[screen.trim(), `${passes.trim()} %`]],
    ),
  );
  const size = joinQuantity(draft.bag.value, draft.bag.unit);
  const entry = {
    material: draft.material,
    name: draft.name.trim() === '' ? undefined : draft.name.trim(),
    ...Object.fromEntries(
      [...fields, 'onHand' as const].map((field) => {
        const typed = draft.figures[field];
        return [field, typed === undefined ? undefined : joinQuantity(typed.value, typed.unit)];
      }),
    ),
    passing: fields.includes('efficiency') && Object.keys(passing).length > 0 ? passing : undefined,
    bag:
      size === undefined ? undefined : { size, ...(draft.price.trim() === '' ? {} : { price: numberOf(draft.price) }) },
    note,
  };
  return Object.fromEntries(Object.entries(entry).filter(([, value]) => value !== undefined)) as MaterialEntry;
}

const labels: Readonly<Record<string, WebCode>> = {
  material: 'web.mat-what',
  name: 'web.mat-name',
  cce: 'web.mat-cce',
  moisture: 'web.mat-moisture',
  efficiency: 'web.mat-efficiency',
  purity: 'web.mat-purity',
  iron: 'web.mat-iron',
  aluminium: 'web.mat-aluminium',
  calcium: 'web.mat-calcium',
  magnesium: 'web.mat-magnesium',
  density: 'web.mat-density',
  onHand: 'web.mat-on-hand',
  passing: 'web.mat-sieves',
  bag: 'web.mat-bag-size',
  'bag.price': 'web.mat-price',
};

/** What is wrong with a material, by field, and the product when nothing is: read as the engine will read it. */
export function checkMaterial(
  entry: MaterialEntry,
  today: string,
): { readonly faults: ReadonlyMap<string, string>; readonly product: Product | undefined } {
  const { problems, garden } = readGarden({ garden: 'x', places: [{ name: 'x' }], materials: [entry] }, { today });
  const faults = problems.flatMap(({ field, message, fix }): [string, string][] => {
    const path = field.replace(/^materials\[0\]\.?/, '');
    const key = path === 'bag.price' ? path : (/^\w+/.exec(path)?.[0] ?? '');
    const code = labels[key];
    const text = `${message} ${fix}`;
    return [[key, code === undefined ? text : text.replaceAll(field, label(code))]];
  });
  return { faults: new Map(faults), product: garden.products[0] };
}
