import { type PlantGroup, type PlantRow, plants } from '@sorrel/almanac/plants';
import type { Ph } from '../units/si.ts';
import type { PlaceKind } from './place.ts';

/** What people grow where, in the order it is offered. Trees and lawns are not proposed for a bed or a pot. */
const GROUPS: Readonly<Record<PlaceKind, readonly PlantGroup[]>> = {
  bed: ['vegetable', 'herb', 'small fruit', 'annual flower', 'perennial flower', 'bulb'],
  plot: ['vegetable', 'small fruit', 'herb', 'shrub', 'perennial flower', 'tree fruit', 'cover crop'],
  container: ['vegetable', 'herb', 'annual flower', 'small fruit', 'bulb'],
};

/** Being further inside the range than this is no better (pH units). */
const COMFORT = 0.5;

/**
 * Plants whose best range holds a pH as it is, a mixture of groups, the most comfortable of each group first. Ranges
 * seen in print go before ranges from memory.
 *
 * @param ph on the soil-in-water scale, taken to a hundredth; in a container on the scale of the mix
 * @param kind decides which groups are offered, and pots use container ranges where a source gives them
 * @param n how many at most
 * @returns names as printed in the almanac
 * @source ranges: almanac `plants`; the order is our own rule (SORREL)
 */
export function suits(ph: Ph, kind: PlaceKind, n: number): readonly string[] {
  // No pH is known closer than a hundredth: a table of thousands asks the same few questions.
  const hundredths = Math.round(ph * 100);
  const question = hundredths * MOST + Math.min(n, MOST - 1);
  let answer = answers[kind].get(question);
  if (answer === undefined) {
    answer = suiting(hundredths / 100, kind, n);
    answers[kind].set(question, answer);
  }
  return answer;
}

/** More plants than the almanac has, so that pH and number make one key. */
const MOST = 1000;
const answers: Readonly<Record<PlaceKind, Map<number, readonly string[]>>> = {
  bed: new Map(),
  plot: new Map(),
  container: new Map(),
};

function suiting(ph: Ph, kind: PlaceKind, n: number): string[] {
  const byGroup = new Map<PlantGroup, { name: string; merit: number }[]>(GROUPS[kind].map((group) => [group, []]));
  for (const plant of plants) {
    const group = byGroup.get(plant.group);
    if (group === undefined) continue;
    const merit = meritAt(ph, plant, kind);
    if (merit !== undefined) group.push({ name: plant.name, merit });
  }
  const queues = [...byGroup.values()].filter((queue) => queue.length > 0);
  for (const queue of queues) queue.sort((a, b) => b.merit - a.merit || (a.name < b.name ? -1 : 1));
  const chosen: string[] = [];
  for (let turn = 0; chosen.length < n && queues.some((queue) => turn < queue.length); turn++)
    for (const queue of queues) {
      const next = queue[turn];
      if (next !== undefined && chosen.length < n) chosen.push(next.name);
    }
  return chosen;
}

function meritAt(ph: Ph, plant: PlantRow, kind: PlaceKind): number | undefined {
  const potted = kind === 'container' && plant.containerLow !== undefined && plant.containerHigh !== undefined;
  const low = potted ? (plant.containerLow ?? plant.low) : plant.low;
  const high = potted ? (plant.containerHigh ?? plant.high) : plant.high;
  if (ph < low || ph > high) return undefined;
  const read = plant.readCount > 0 ? 1 : 0;
  // More sources on one plant are a small sign that people grow it.
  return read + Math.min(ph - low, high - ph, COMFORT) + Math.min(plant.sourceCount, 3) / 10;
}
