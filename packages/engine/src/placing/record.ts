import type { Recorder } from '../derivation/derivation.ts';
import { gather } from '../plan/evidence.ts';
import type { Settings } from '../plan/place.ts';
import { requirementOf } from '../plan/size.ts';
import type { Board } from './board.ts';
import { towards } from './moves.ts';
import type { Choice } from './read-back.ts';

/**
 * Tells a recorder how the objective came about: for each place that is moved the evidence, the curve and the need, then
 * the need of the whole place, then the sum over the garden.
 */
export function recordObjective(
  board: Board,
  choice: Choice,
  settings: Settings,
  proven: boolean,
  recorder: Recorder,
): void {
  const moved = board.spots.flatMap((spot, at) => {
    const move = spot.moves[choice.moves[at] as number];
    return move === undefined || move.direction === 'none' ? [] : [{ spot, move }];
  });
  for (const { spot, move } of moved) {
    const { place } = spot;
    const curveAt = move.curveAt ?? move.ph;
    const { present, reconciled, layer } = gather(place, towards(curveAt), settings, recorder, true);
    if (present === undefined || reconciled?.curve === undefined) continue;
    recorder.step({
      symbol: 'T',
      title: `pH that ${place.name} must reach`,
      formula: 'T = nearest end of the range that all its plants share',
      terms: [{ symbol: 'pH', value: present.mean, unit: 'pH', origin: 'step' }],
      value: move.ph,
      unit: 'pH',
      sources: ['SORREL'],
      basis: 'derived',
    });
    requirementOf(reconciled.curve, layer, present, move.ph, recorder);
    const pot = place.kind === 'container';
    recorder.step({
      symbol: `D_${place.id}`,
      title: `Soil to be moved in ${place.name}`,
      formula: pot ? 'D = D_need · volume' : 'D = D_need · area',
      terms: [
        {
          symbol: 'D_need',
          value: move.currency / (pot ? (place.volume ?? 1) : place.area),
          unit: pot ? 'kg CaCO3/m³' : 'kg CaCO3/m²',
          origin: 'step',
        },
        pot
          ? { symbol: 'volume', value: place.volume ?? 0, unit: 'm³', origin: 'entered' }
          : { symbol: 'area', value: place.area, unit: 'm²', origin: 'entered' },
      ],
      value: move.currency,
      unit: 'kg CaCO3',
      sources: ['SORREL'],
      basis: 'derived',
      note: 'To the nearest end of the range that its plants share, not to the middle: this compares places. The plan of the place says what to weigh out.',
    });
  }
  recorder.step({
    symbol: 'D_garden',
    title: 'Soil to be moved in the whole garden',
    formula: 'D_garden = sum of D over the places, as small as can be',
    terms: moved.map(({ spot, move }) => ({
      symbol: `D_${spot.place.id}`,
      value: move.currency,
      unit: 'kg CaCO3',
      origin: 'step' as const,
    })),
    value: choice.moved,
    unit: 'kg CaCO3',
    sources: ['SORREL'],
    basis: 'derived',
    note: proven
      ? 'A whole-number programme proved that no way of placing the plants moves less.'
      : 'The search was stopped before it could prove that nothing moves less.',
  });
}
