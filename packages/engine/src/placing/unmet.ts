import type { Message } from '../derivation/message.ts';
import type { Unmet } from './arrangement.ts';
import { type Bar, type Board, closedFor } from './board.ts';
import type { Choice } from './read-back.ts';

/** What stands in the way of all wishes together, proven by solving without it. */
export type Hindrance = 'rotation' | 'ph' | 'room';

/** Which wishes are not met, and why: no place at all, too little room where it could grow, or what stands in the way. */
export function unmetWishes(board: Board, choice: Choice, hindrance: Hindrance): Unmet[] {
  return board.items.flatMap((item, index) => {
    const short = choice.unmet[index] ?? [];
    const most = Math.max(0, ...short);
    if (most === 0) return [];
    const seasons = short.flatMap((pieces, season) => (pieces > 0 ? [season + 1] : []));
    // Whole pieces stand for a little more than was asked.
    const area = most === Math.max(...item.demand) ? item.wish.area : most * board.piece;
    return [{ plant: item.plant.name, seasons, area, reasons: reasonsFor(board, index, area, hindrance) }];
  });
}

function reasonsFor(board: Board, index: number, short: number, hindrance: Hindrance): Message[] {
  const item = board.items[index];
  if (item === undefined) return [];
  const plant = item.plant.name;
  const area = { value: short, dimension: 'area' as const };
  const open = board.spots.filter((spot) => spot.suits[index] !== undefined);
  const reasons: Message[] = [];
  const room = open.reduce((sum, spot) => sum + spot.room, 0);
  const wanted = Math.max(...item.demand);
  if (open.length === 0) reasons.push({ code: 'placing.no-place', parameters: { plant } });
  else if (room < wanted)
    reasons.push({
      code: 'placing.no-room-where-it-grows',
      parameters: { plant, area, room: { value: room * board.piece, dimension: 'area' }, places: names(open) },
    });
  else if (hindrance === 'rotation')
    reasons.push({
      code: 'placing.rotation-in-the-way',
      parameters: { plant, area, family: item.family, years: longestRest(board, item.family) },
    });
  else
    reasons.push({
      code: hindrance === 'ph' ? 'placing.ph-in-the-way' : 'placing.no-room',
      parameters: { plant, area },
    });
  if (room < wanted) {
    for (const bar of ['ph', 'unknown', 'light', 'pots'] as const) {
      const barred = board.spots.filter((spot) => spot.bars[index] === bar);
      if (barred.length > 0) reasons.push({ code: BAR_CODES[bar], parameters: { plant, places: names(barred) } });
      if (bar === 'ph')
        for (const why of new Map(
          barred.flatMap((spot) => closedFor(spot, item.plant) ?? []).map((each) => [each.code, each]),
        ).values())
          reasons.push(why);
    }
    if (item.wish.pots !== 'never') reasons.push({ code: 'placing.try-a-pot', parameters: { plant } });
  }
  return reasons;
}

const BAR_CODES: Readonly<Record<Bar, Message['code']>> = {
  ph: 'placing.barred-ph',
  light: 'placing.barred-light',
  pots: 'placing.barred-pots',
  unknown: 'placing.barred-untested',
};

const names = (spots: Board['spots']): string => spots.map(({ place }) => place.name).join(', ');

const longestRest = (board: Board, family: string): number =>
  Math.max(...board.spots.map((spot) => board.rotation(spot, family).years));
