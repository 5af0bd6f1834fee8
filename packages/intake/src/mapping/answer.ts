import { parseQuantity } from '@sorrel/engine/units';
import { meanings, NOT_USED } from '../columns/meanings.ts';
import type { Question } from './question.ts';
import { type MappedColumn, type SenderMapping, senderMapping } from './schema.ts';

/** A mapping with one answer put in; `undefined` when the text does not answer the question. */
export function withAnswer(mapping: SenderMapping, question: Question, value: string): SenderMapping | undefined {
  if (question.choices.length > 0 && !question.choices.some((each) => each.value === value)) return undefined;
  const changed = put(mapping, question, value);
  const checked = changed === undefined ? undefined : senderMapping.safeParse(changed);
  return checked?.success ? checked.data : undefined;
}

function put(mapping: SenderMapping, { id, column, wants }: Question, value: string): unknown {
  const change = (title: string | undefined, how: (column: MappedColumn) => unknown) => ({
    ...mapping,
    columns: mapping.columns.map((each) => (each.title === title ? how(each) : each)),
  });
  if (value === NOT_USED) return change(column, ({ title }) => ({ title, means: NOT_USED }));
  const [about] = id.split(':');
  switch (about) {
    case 'ph-column':
      return change(value, ({ title }) => ({ title, means: 'ph' }));
    case 'meaning':
      return meanings.includes(value) ? change(column, (each) => ({ ...each, means: value })) : undefined;
    case 'ph-method':
      return change(column, (each) => ({ ...each, method: value }));
    case 'buffer':
      return change(column, (each) => ({ ...each, buffer: value }));
    case 'unit':
      return change(column, (each) => ({ ...each, unit: value }));
    case 'dates':
      return { ...mapping, dates: value };
    case 'decimal':
      return { ...mapping, decimal: value };
    case 'lime':
      return { ...mapping, lime: { ...mapping.lime, use: value === 'use' } };
    case 'lime-depth':
      return wants === 'length' && parseQuantity(value, 'length').ok
        ? { ...mapping, lime: { use: true, ...mapping.lime, depth: value } }
        : undefined;
    case 'lime-target':
      return { ...mapping, lime: { use: true, ...mapping.lime, target: Number(value) } };
    case 'lime-purity':
      return { ...mapping, lime: { use: true, ...mapping.lime, purity: Number(value.replace(/\s*%$/, '')) } };
    default:
      return undefined;
  }
}
