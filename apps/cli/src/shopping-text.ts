import type { ShoppingLine } from '@sorrel/engine/plan';
import type { Speaker } from './speak.ts';
import { tableText } from './table-text.ts';
import { words } from './words.ts';

/** What to buy for the first steps of all places. */
export function shoppingText(lines: readonly ShoppingLine[], money: string, speaker: Speaker): string {
  if (lines.length === 0) return `${words.shopping}\n  ${words.nothingToBuy}\n`;
  const [material, needed, onHand, buy, bags, cost] = words.shoppingColumns;
  const rows = lines.map((line) => [
    line.product.name,
    speaker.weight(line.needed),
    line.onHand > 0 ? speaker.weight(line.onHand) : '',
    line.buy > 0 ? speaker.weight(line.buy) : '',
    line.bags === undefined || line.bags === 0 ? '' : `${line.bags} x ${speaker.weight(line.product.bag?.mass ?? 0)}`,
    line.cost === undefined || line.cost === 0 ? '' : `${money}${line.cost.toFixed(2)}`,
  ]);
  const table = tableText(
    [
      { title: material, flexible: true },
      { title: needed, align: 'right' },
      { title: onHand, align: 'right' },
      { title: buy, align: 'right' },
      { title: bags, align: 'right' },
      { title: cost, align: 'right' },
    ],
    rows,
    { indent: 2, rule: speaker.rule },
  );
  return `${words.shopping}\n${table}\n`;
}
