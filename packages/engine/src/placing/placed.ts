import type { Message } from '../derivation/message.ts';
import type { Clash, Growing, PlacedPlace } from './arrangement.ts';
import { type Board, closedFor, type Spot } from './board.ts';
import { breaksRotation } from './model.ts';
import { rangeIn } from './ranges.ts';
import type { Choice } from './read-back.ts';
import { splitBed } from './split-bed.ts';

const ph = (value: number) => ({ value, dimension: 'ph' as const });

/** What grows in each place, season by season, and why there. */
export function placedPlaces(board: Board, choice: Choice): PlacedPlace[] {
  return board.spots.map((spot, at) => {
    const { place, reach, residents, fixed, moves } = spot;
    const move = moves[choice.moves[at] as number];
    const seasons = Array.from({ length: board.seasons }, (_, season): Growing[] => {
      const growing: Growing[] = residents.map(({ plant, area }) => ({
        plant: plant.name,
        key: plant.key,
        area,
        stays: true,
        fixed: true,
      }));
      board.items.forEach((item, index) => {
        const size = choice.pieces[season]?.[at]?.[index] ?? 0;
        if (size === 0) return;
        growing.push({
          plant: item.plant.name,
          key: item.plant.key,
          // Whole pieces stand for a little more than was asked.
          area: size === item.demand[season] ? item.wish.area : size * board.piece,
          stays: item.stays,
          fixed: (fixed.get(index)?.[season] ?? 0) > 0,
        });
      });
      return growing;
    });
    return {
      place: place.id,
      name: place.name,
      ...(reach.present === undefined ? {} : { present: reach.present }),
      ...(move === undefined ? {} : { ph: move.ph }),
      move,
      seasons,
      reasons: reasonsFor(board, spot, choice, at),
    };
  });
}

function reasonsFor(board: Board, spot: Spot, choice: Choice, at: number): Message[] {
  const { place, moves, reach } = spot;
  const move = moves[choice.moves[at] as number];
  const grown = board.items.filter((_, index) => choice.pieces.some((season) => (season[at]?.[index] ?? 0) > 0));
  const plants = [...new Set([...spot.residents.map(({ plant }) => plant), ...grown.map(({ plant }) => plant)])];
  const reasons: Message[] = [];
  if (plants.length === 0) reasons.push({ code: 'placing.empty' });
  else if (move === undefined) reasons.push({ code: 'placing.untested' });
  else if (reach.present === undefined) reasons.push({ code: 'placing.fresh-pot', parameters: { ph: ph(move.ph) } });
  else if (move.direction === 'none') {
    if (spot.clash === undefined) reasons.push({ code: 'placing.fits', parameters: { ph: ph(move.ph) } });
  } else {
    // The plants whose range ends where the move ends are those it is made for.
    const why = plants.filter((plant) => {
      const { low, high } = rangeIn(place, plant);
      return Math.abs((move.direction === 'raise' ? low : high) - move.ph) < 1e-9;
    });
    reasons.push({
      code: move.direction === 'raise' ? 'placing.raise' : 'placing.lower',
      parameters: {
        from: ph(reach.present),
        to: ph(move.ph),
        plants: (why.length > 0 ? why : plants).map(({ name }) => name).join('; '),
      },
    });
  }
  if (move !== undefined && reach.present !== undefined && reach.sd !== undefined)
    if (move.direction !== 'none' && Math.abs(move.ph - reach.present) < reach.sd)
      reasons.push({ code: 'placing.within-error' });
  const families = new Set(grown.filter(({ stays }) => !stays).map(({ family }) => family));
  for (const family of families)
    if (breaksRotation(board, spot, family)) {
      const { years } = board.rotation(spot, family);
      reasons.push({ code: 'placing.fixed-breaks-rotation', parameters: { family, years } });
    }
  return reasons;
}

/** Places whose settled plants share no pH, or none that can be reached, with the least bad way to part them. */
export function clashesOf(board: Board): Clash[] {
  return board.spots.flatMap((spot) => {
    const { clash, place, musts } = spot;
    if (clash === undefined) return [];
    const split = splitBed(musts.map((plant) => ({ ...plant, ...rangeIn(place, plant) })));
    const plants = musts.map(({ name }) => name);
    const parameters = { place: place.name, plants: plants.join('; ') };
    const messages: Message[] =
      clash === 'no common range'
        ? [{ code: 'placing.no-common-range', parameters }, ...split.messages]
        : [
            { code: 'placing.out-of-reach', parameters },
            ...musts.flatMap((plant) => closedFor(spot, plant) ?? []).slice(0, 1),
          ];
    return [{ place: place.id, plants, split, messages }];
  });
}
