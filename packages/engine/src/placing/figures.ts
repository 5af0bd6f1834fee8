import type { Product } from '../materials/material.ts';
import type { Figures } from './arrangement.ts';
import type { Board } from './board.ts';
import type { Choice } from './read-back.ts';

/**
 * What a choice asks: soil moved, material, money by the bag, months until the last place is ready, places moved.
 *
 * @source as for each move, `movesOf`; bags are bought whole (as in `costOf`)
 */
export function figuresOf(board: Board, choice: Choice): Figures {
  const { spots, piece } = board;
  const needed = new Map<Product, number>();
  let [currency, material, months, places] = [0, 0, 0, 0];
  spots.forEach((spot, at) => {
    const move = spot.moves[choice.moves[at] as number];
    if (move === undefined || move.direction === 'none') return;
    currency += move.currency;
    material += move.material;
    months = Math.max(months, move.months);
    places++;
    if (move.product !== undefined) needed.set(move.product, (needed.get(move.product) ?? 0) + move.material);
  });
  const money = moneyOf(needed);
  const unmet = choice.unmet.reduce((sum, list) => sum + list.reduce((all, each) => all + each, 0), 0) * piece;
  return { currency, material, ...(money === undefined ? {} : { money }), months, places, unmet };
}

function moneyOf(needed: ReadonlyMap<Product, number>): number | undefined {
  let money = 0;
  for (const [{ bag, onHand }, mass] of needed) {
    const buy = Math.max(0, mass - (onHand ?? 0));
    if (buy === 0) continue;
    if (bag?.price === undefined) return undefined;
    money += Math.ceil(buy / bag.mass - 1e-6) * bag.price;
  }
  return money;
}

/** What the first way asks more than the second. */
export function differenceOf(more: Figures, less: Figures): Figures {
  return {
    currency: more.currency - less.currency,
    material: more.material - less.material,
    ...(more.money === undefined || less.money === undefined ? {} : { money: more.money - less.money }),
    months: more.months - less.months,
    places: more.places - less.places,
    unmet: more.unmet - less.unmet,
  };
}
