import { findPlant } from '@sorrel/almanac/plants';
import { LIGHTS, type PlaceRules, type PlacingInput, stays, type Wish } from '@sorrel/engine/placing';
import { type Place, type PlantRange, plantRangeOf, type Settings } from '@sorrel/engine/plan';
import { chance } from './soil-tests.ts';

const settings: Settings = { today: '2026-11-01', overshootChance: 0.05, hemisphere: 'north', finenessSystem: 'OH' };
const textures = [
  { name: 'sandy loam', parts: { sand: 0.65, silt: 0.25, clay: 0.1 } },
  { name: 'loam', parts: { sand: 0.4, silt: 0.4, clay: 0.2 } },
  { name: 'silt loam', parts: { sand: 0.2, silt: 0.65, clay: 0.15 } },
  { name: 'clay loam', parts: { sand: 0.33, silt: 0.34, clay: 0.33 } },
] as const;

/** What gardeners grow: how much of it beside the others, and what it asks of the light. */
const crops = {
  sun: 'tomato potato pepper eggplant squash-summer squash-winter cucumber sweet-corn bean-snap bean-runner onion strawberry blueberry-highbush raspberry-red lavender rosemary thyme sage sunflower zinnia cosmos muskmelon asparagus',
  'part shade':
    'pea bean-broad carrot beet cabbage broccoli cauliflower kale chard lettuce leek garlic radish turnip parsnip celery rhubarb currant-black gooseberry bilberry sweet-pea marigold pot-marigold nasturtium parsley cilantro chives oregano brussels-sprouts rutabaga',
  shade: 'spinach arugula mint lemon-balm',
} as const;
const much = new Set('tomato potato squash-winter sweet-corn bean-snap cabbage carrot onion pea garlic'.split(' '));
const small = new Set(
  'lavender rosemary thyme sage parsley cilantro chives oregano mint lemon-balm arugula radish marigold nasturtium'.split(
    ' ',
  ),
);
const residents = ['blueberry-highbush', 'asparagus', 'rhubarb', 'raspberry-red', 'lavender', 'strawberry'];
const families = ['Solanaceae', 'Brassicaceae', 'Fabaceae', 'Cucurbitaceae', 'Amaryllidaceae', 'Apiaceae', 'Poaceae'];

const rangeOf = (key: string): PlantRange | undefined => {
  const row = findPlant(key);
  return row === undefined ? undefined : plantRangeOf(row);
};

/**
 * A made-up garden as an educator keeps one, the same for the same seed. Seven places in ten are beds and plots on
 * naturally sour ground, one in ten was limed once too often, the others are pots, some of them filled afresh. A place in
 * ten holds perennials, one in five lies in some shade, half of them remember what grew there last year, one in twenty
 * has its plants fixed, and one or two were never tested. The wishes want seven tenths of the ground; a quarter of them
 * only in some seasons.
 */
export function placingGarden(seed: number, places: number, wishes: number, seasons: 1 | 2 | 3): PlacingInput {
  const next = chance(seed);
  const pick = <T>(from: readonly T[]): T => from[Math.floor(next() * from.length)] as T;
  const tenths = (low: number, high: number) => Math.round(10 * (low + (high - low) * next())) / 10;
  const grounds = Array.from({ length: places }, (_, index): Place => {
    const kind = next();
    const pot = kind > 0.8;
    const ph = pot ? tenths(5, 6.6) : kind > 0.7 ? tenths(6.8, 7.4) : tenths(4.6, 6.4);
    const untested = pot ? next() < 0.5 : next() < 0.03;
    const texture = pick(textures);
    return {
      id: `place-${index + 1}`,
      name: `${pot ? 'Pot' : 'Bed'} ${index + 1}`,
      kind: pot ? 'container' : next() < 0.6 ? 'bed' : 'plot',
      situation: pot ? 'container' : 'open ground',
      medium: pot ? 'soilless' : 'mineral',
      area: pot ? tenths(0.2, 0.8) : tenths(1.2, 12),
      depth: pot ? 0.3 : 0.2,
      ...(pot ? { volume: tenths(0.1, 0.3) } : { texture: { ...texture, basis: 'class' as const } }),
      ...(pot ? {} : { organicMatter: 0.03 + 0.03 * next() }),
      plants: [],
      applications: [],
      tests: untested
        ? []
        : [
            {
              id: `test-${index + 1}`,
              date: '2026-09-15',
              instrument: 'laboratory',
              depth: 0.2,
              cores: 12,
              ph: { value: ph, method: pot ? 'media-extract' : 'water-1:1' },
            },
          ],
    };
  });

  const chosen: { readonly plant: PlantRange; readonly light: (typeof LIGHTS)[number] }[] = [];
  const names = LIGHTS.flatMap((light) => crops[light].split(' ').map((key) => ({ key, light })));
  while (chosen.length < wishes && names.length > 0) {
    const [{ key, light } = { key: '', light: LIGHTS[0] }] = names.splice(Math.floor(next() * names.length), 1);
    const plant = rangeOf(key);
    if (plant !== undefined) chosen.push({ plant, light });
  }
  const weights = chosen.map(({ plant: { key } }) => (0.5 + next()) * (much.has(key) ? 3 : small.has(key) ? 0.3 : 1));
  const ground = grounds.reduce((sum, { area }) => sum + area, 0);
  const sum = weights.reduce((total, each) => total + each, 0);
  const wished = chosen.map(({ plant, light }, index): Wish => {
    const area = Math.max(0.2, Math.round((10 * 0.7 * ground * (weights[index] as number)) / sum) / 10);
    const rare = seasons > 1 && !stays(plant) && next() < 0.25;
    return {
      plant,
      area,
      light,
      ...(rare ? { seasons: [1 + Math.floor(next() * seasons)] } : {}),
      ...(area > 2 ? { pots: 'never' as const } : {}),
    };
  });

  const rules = grounds.map((place): PlaceRules => {
    const shade = next();
    const light = shade < 0.05 ? 'shade' : shade < 0.2 ? 'part shade' : 'sun';
    const inGround = place.kind !== 'container';
    const holds = inGround && next() < 0.1 ? rangeOf(pick(residents)) : undefined;
    const settled = inGround && holds === undefined && next() < 0.05 ? pick(wished) : undefined;
    return {
      place: place.id,
      light,
      stays: holds === undefined ? [] : [{ plant: holds, area: place.area / 2 }],
      ...(settled === undefined
        ? {}
        : {
            fixed: [
              {
                plant: settled.plant,
                area: Math.min(settled.area, place.area) / 2,
                ...(stays(settled.plant) ? {} : { seasons: [settled.seasons?.[0] ?? 1] }),
              },
            ],
          }),
      ...(next() < 0.5 ? { history: [{ grew: pick(families), yearsAgo: 1 }] } : {}),
    };
  });
  return { places: grounds, wishes: wished, rules, seasons, products: [], settings };
}
