import type { Message } from '../derivation/message.ts';
import type { PlantRange } from '../plan/place.ts';
import { fit } from '../plan/plant-range.ts';
import type { Ph } from '../units/si.ts';

type Plant = Pick<PlantRange, 'name' | 'low' | 'high' | 'toleratesLow' | 'toleratesHigh'>;

export interface SplitGroup {
  readonly plants: readonly string[];
  /** pH that all plants of the group call best. */
  readonly low: Ph;
  readonly high: Ph;
}

/** What to do with plants that share no pH. */
export interface SplitBed {
  /** As few groups as can be, the sourest first, each with a pH of its own. One group when all can live together. */
  readonly groups: readonly SplitGroup[];
  /** When they must stay together: the pH at which the plant that suffers most suffers least. */
  readonly together: { readonly ph: Ph; readonly worst: string; readonly fit: number };
  readonly messages: readonly Message[];
}

/**
 * The least bad way to part a bed whose plants share no pH: the fewest groups that each share one, and plants that could
 * go to two groups go where they sit deeper inside their range.
 *
 * @param plants of one bed, at least one
 * @throws RangeError for an empty list
 * @source fewest points that hit all ranges; own rule (SORREL) for the rest
 */
export function splitBed(plants: readonly Plant[]): SplitBed {
  if (plants.length === 0) throw new RangeError('splitBed needs at least one plant');
  const points: Ph[] = [];
  for (const plant of [...plants].sort((a, b) => a.high - b.high))
    if (!points.some((point) => plant.low <= point && point <= plant.high)) points.push(plant.high);
  const members = points.map((): Plant[] => []);
  const depth = (plant: Plant, point: Ph) => Math.min(point - plant.low, plant.high - point);
  for (const plant of plants) {
    let best = 0;
    points.forEach((point, at) => {
      // The ends of ranges are where the points lie, so a plant is weighed against the group's own room.
      if (depth(plant, point) > depth(plant, points[best] as Ph)) best = at;
    });
    members[best]?.push(plant);
  }
  const groups = members.map((group) => ({
    plants: group.map(({ name }) => name),
    low: Math.max(...group.map(({ low }) => low)),
    high: Math.min(...group.map(({ high }) => high)),
  }));
  const together = leastBad(plants);
  const messages: Message[] = [];
  if (groups.length > 1) {
    for (const { plants: names, low, high } of groups)
      messages.push({
        code: 'placing.split-group',
        parameters: {
          plants: names.join('; '),
          low: { value: low, dimension: 'ph' },
          high: { value: high, dimension: 'ph' },
        },
      });
    messages.push({
      code: together.fit > 0 ? 'placing.split-together' : 'placing.split-never',
      parameters: { ph: { value: together.ph, dimension: 'ph' }, plant: together.worst },
    });
  }
  return { groups, together, messages };
}

/** pH to a tenth at which the worst fit is best, the sourest among equals. */
function leastBad(plants: readonly Plant[]): SplitBed['together'] {
  let best: SplitBed['together'] = { ph: 7, worst: plants[0]?.name ?? '', fit: -1 };
  for (let tenths = 35; tenths <= 90; tenths++) {
    const ph = tenths / 10;
    let worst = plants[0] as Plant;
    let least = Number.POSITIVE_INFINITY;
    for (const plant of plants) {
      const found = fit(ph, plant);
      if (found < least) {
        least = found;
        worst = plant;
      }
    }
    if (least > best.fit) best = { ph, worst: worst.name, fit: least };
  }
  return best;
}
