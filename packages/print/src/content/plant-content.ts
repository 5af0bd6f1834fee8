import type { HalfKnownPlantRow } from '@sorrel/almanac/half-known-plants';
import { rangesOf } from '@sorrel/almanac/plant-ranges';
import type { PlantRow } from '@sorrel/almanac/plants';
import type { MessageCode } from '@sorrel/almanac/words';
import { diseasesOf, diseaseTarget } from '@sorrel/engine/nutrients';
import {
  apartSaid,
  PLACE_VERDICTS,
  type PlantInPlace,
  plantInPlace,
  plantsApart,
  rangeFor,
} from '@sorrel/engine/placing';
import { type Garden, type GardenPlan, type Place, plantNotes, type Recommendation } from '@sorrel/engine/plan';
import { printPh } from '@sorrel/engine/units';
import type { Sheet } from '../page.ts';
import { once, type Speaker } from '../speaker.ts';
import { type PhRow, phLineOf } from './ph-line.ts';

/** A plant of the almanac, with a best range in the ground or without. */
export type AnyPlant = PlantRow | HalfKnownPlantRow;

/** The words and figures of a plant's page: its range on the line of the garden's places, and who says so. */
export function plantContent(plant: AnyPlant, garden: Garden, plan: GardenPlan, speaker: Speaker): Sheet {
  const { word } = speaker;
  const mark = word('print.memory-mark');
  const range = rangeFor(plant, 'mineral');
  const fits = garden.places
    .flatMap((place, index) => {
      const advice = plan.recommendations[index];
      return advice === undefined ? [] : [{ place, advice, fit: plantInPlace(plant, place, advice) }];
    })
    .sort((a, b) => PLACE_VERDICTS.indexOf(a.fit.verdict) - PLACE_VERDICTS.indexOf(b.fit.verdict));
  const diseases = diseasesOf(plant.key);
  const here =
    range === undefined
      ? []
      : plantsApart(
          range,
          garden.places.flatMap(({ plants }) => plants),
        );
  const published = rangesOf(plant.key);
  const bare = range ?? { key: plant.key, name: plant.name, low: 0, high: 14 };
  return {
    title: plant.name,
    under: word('print.plant-under', { botanical: plant.botanical, group: plant.group, family: plant.family }),
    first: [{ title: word('print.plant-wants'), items: wants(plant, speaker) }],
    line: phLineOf(
      fits.map(({ place, advice, fit }) => row(place, advice, fit, speaker)),
      speaker,
    ),
    lineTitle: word('print.plant-places'),
    parts: [
      ...(fits.length === 0
        ? []
        : [
            {
              title: word('print.plant-why'),
              lead: word('print.plant-ph-alone'),
              table: {
                widths: ['1', '1', '3'],
                head: [word('print.plant-place'), word('print.plant-verdict'), word('print.plant-reason')],
                rows: fits.map(({ place, fit }) => [
                  place.name,
                  word(verdictCode(fit)),
                  once(speaker, fit.reasons).join(' ') || word('print.plant-no-reason'),
                ]),
              },
            },
          ]),
      ...(diseases.length === 0
        ? []
        : [
            {
              title: word('print.plant-diseases'),
              items: diseases.map(
                (disease) =>
                  `${once(speaker, diseaseTarget([bare], [disease.key]).messages).join(' ')}${disease.basis === 'memory' ? mark : ''}`,
              ),
            },
          ]),
      ...(range === undefined || here.length === 0
        ? []
        : [
            {
              title: word('print.plant-apart'),
              items: here.map((other) => speaker.say(apartSaid(plant.name, range, other.name, other))),
            },
          ]),
      {
        title: word('print.plant-published'),
        table: {
          widths: ['1', '1', 'auto', 'auto'],
          head: [
            word('print.plant-source'),
            word('print.plant-measured'),
            word('print.plant-best'),
            word('print.plant-stands'),
          ],
          rows: published.map((each) => [
            `${each.sources.join(', ')}${each.basis === 'memory' ? mark : ''}`,
            word(`print.plant-medium-${each.medium.replaceAll(' ', '-')}` as MessageCode),
            ends(each.low, each.high),
            ends(each.toleratesLow, each.toleratesHigh),
          ]),
        },
      },
    ],
    sources: [
      ...plant.sources,
      ...published.flatMap(({ sources }) => sources),
      ...diseases.flatMap(({ sources }) => sources),
    ],
    memory: [plant, ...published, ...diseases].some(({ basis }) => basis === 'memory'),
  };
}

/** The verdicts have words of their own; the cast is held by the test that prints each. */
const verdictCode = ({ verdict }: PlantInPlace) => `print.plant-fit-${verdict.replaceAll(' ', '-')}` as MessageCode;

function wants(plant: AnyPlant, speaker: Speaker): readonly string[] {
  const { word } = speaker;
  const half = !('aim' in plant);
  const mark = plant.basis === 'memory' ? word('print.memory-mark') : '';
  const { containerLow, containerHigh } = plant;
  const pots =
    containerLow === undefined || containerHigh === undefined
      ? []
      : [word('print.plant-pots', { low: printPh(containerLow), high: printPh(containerHigh) })];
  if (half)
    return [
      ...pots,
      ...(plant.foundHigh === undefined
        ? []
        : [word('print.plant-found', { range: ends(plant.foundLow, plant.foundHigh) })]),
      word(pots.length === 0 ? 'print.plant-no-best' : 'placing.only-pots-known', { plant: plant.name }),
    ];
  return [
    word('print.plant-ground', { low: printPh(plant.low), high: printPh(plant.high) }) + mark,
    ...pots,
    ...(plant.toleratesLow === undefined || plant.toleratesHigh === undefined
      ? []
      : [word('print.plant-survives', { low: printPh(plant.toleratesLow), high: printPh(plant.toleratesHigh) })]),
    ...once(speaker, plantNotes(plant)),
  ];
}

function row(place: Place, advice: Recommendation, fit: PlantInPlace, speaker: Speaker): PhRow {
  const { present } = advice;
  const wanted = fit.range;
  return {
    name: place.name,
    verdict: speaker.word(verdictCode(fit)),
    ...(present === undefined
      ? {}
      : {
          today: {
            mean: present.mean,
            sd: present.sd,
            from: present.mean - 1.96 * present.sd,
            to: present.mean + 1.96 * present.sd,
          },
        }),
    ...(wanted === undefined ? {} : { wanted: { low: wanted.low, high: wanted.high } }),
    ...(fit.planned === undefined ? {} : { aim: fit.planned.ph }),
    todayText:
      present === undefined
        ? speaker.word('print.line-no-reading')
        : speaker.word('print.line-today', { ph: printPh(present.mean) }),
    wantedText:
      wanted === undefined
        ? ''
        : speaker.word('print.line-wanted', { low: printPh(wanted.low), high: printPh(wanted.high) }),
  };
}

const ends = (low: number | undefined, high: number | undefined): string =>
  low === undefined && high === undefined
    ? '–'
    : `${low === undefined ? '' : printPh(low)} – ${high === undefined ? '' : printPh(high)}`;
