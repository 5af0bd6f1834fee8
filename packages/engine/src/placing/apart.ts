import type { Message } from '../derivation/message.ts';
import type { PlantRange } from '../plan/place.ts';

/**
 * Which wished plants must not share a place because no pH suits both. Acid-lovers are named together, with all that must
 * be kept apart from them; any other pair is named by itself.
 *
 * @source ranges of the plants; own rule (SORREL)
 */
export function keepApart(plants: readonly PlantRange[]): readonly Message[] {
  const messages: Message[] = [];
  const isSour = (plant: PlantRange) => plant.reaction === 'acid-loving';
  const clashes = (a: PlantRange, b: PlantRange) => a.low > b.high || b.low > a.high;
  const sour = plants.filter(isSour);
  const others = plants.filter((plant) => !isSour(plant));
  const bySour = new Map<string, { sour: PlantRange[]; others: PlantRange[] }>();
  for (const plant of sour) {
    const apart = others.filter((other) => clashes(plant, other));
    if (apart.length === 0) continue;
    const key = apart.map((other) => other.key).join(' ');
    const group = bySour.get(key);
    if (group === undefined) bySour.set(key, { sour: [plant], others: apart });
    else group.sour.push(plant);
  }
  for (const group of bySour.values())
    messages.push({
      code: 'placing.apart-acid-lovers',
      parameters: {
        plants: names(group.others),
        sour: names(group.sour),
        high: { value: Math.min(...group.sour.map(({ high }) => high)), dimension: 'ph' },
        low: { value: Math.min(...group.others.map(({ low }) => low)), dimension: 'ph' },
      },
    });
  for (const list of [sour, others])
    list.forEach((a, index) => {
      for (const b of list.slice(index + 1))
        if (clashes(a, b)) {
          const [low, high] = a.low > b.high ? [b, a] : [a, b];
          messages.push({
            code: 'placing.apart',
            parameters: {
              a: low.name,
              b: high.name,
              high: { value: low.high, dimension: 'ph' },
              low: { value: high.low, dimension: 'ph' },
            },
          });
        }
    });
  return messages;
}

const names = (plants: readonly PlantRange[]): string => [...new Set(plants.map(({ name }) => name))].join('; ');
