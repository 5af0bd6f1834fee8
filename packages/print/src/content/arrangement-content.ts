import type { Arrangement, Figures, Growing, PlacedPlace } from '@sorrel/engine/placing';
import { once, type Speaker } from '../speaker.ts';

/** Less than a scale shows, kg. */
const NOTHING = 1e-3;

/** The words and figures of an arrangement, in the order they stand on the page. */
export function arrangementContent(garden: string, arrangement: Arrangement, speaker: Speaker) {
  const { places, unmet, clashes, apart, messages, figures, runnerUp, greedy } = arrangement;
  const seasons = Math.max(1, ...places.map((place) => place.seasons.length));
  return {
    garden,
    seasons: Array.from({ length: seasons }, (_, at) =>
      seasons === 1
        ? speaker.word('print.placing-grows')
        : speaker.word('print.placing-season', { season: String(at + 1) }),
    ),
    // Places that are given something come first; those that stay empty only lengthen the list.
    places: [...places]
      .sort((a, b) => Number(isEmpty(a)) - Number(isEmpty(b)))
      .map((place) => placeRow(place, speaker)),
    care: [
      ...clashes.map(({ messages: said }) => once(speaker, said)),
      ...unmet.map(({ plant, area, seasons: short, reasons }) => [
        speaker.word('print.placing-unmet-one', {
          plant,
          area: speaker.rough(area, 'area'),
          seasons: short.join(', '),
        }),
        ...once(speaker, reasons),
      ]),
    ],
    apart: once(speaker, apart),
    said: once(speaker, [...messages, ...(runnerUp?.messages ?? [])]),
    saves:
      greedy.unmet - figures.unmet > NOTHING
        ? speaker.word('print.placing-saves-unmet', { area: speaker.rough(greedy.unmet - figures.unmet, 'area') })
        : greedy.currency - figures.currency > NOTHING
          ? speaker.word('print.placing-saves', {
              amount: speaker.rough(greedy.currency - figures.currency, 'mass'),
            })
          : '',
    ways: [
      way(speaker.word('print.placing-this'), figures, speaker),
      ...(runnerUp === undefined ? [] : [way(speaker.word('print.placing-next'), runnerUp.figures, speaker)]),
      way(speaker.word('print.placing-greedy'), greedy, speaker),
    ],
  };
}

const isEmpty = ({ seasons }: PlacedPlace): boolean => seasons.every((season) => season.length === 0);

function placeRow(place: PlacedPlace, speaker: Speaker) {
  const { name, seasons, reasons, move } = place;
  const spread =
    move?.product === undefined
      ? []
      : [
          speaker.word('print.placing-spread', {
            mass: speaker.rough(move.material, 'mass'),
            product: move.product.name,
            months: String(move.months),
          }),
        ];
  return {
    name,
    seasons: seasons.map((season) => season.map((each) => growingText(each, speaker))),
    // Where nothing is said the plants of the place fit nowhere it could be brought to.
    why: [
      ...(reasons.length === 0 ? [speaker.word('print.placing-why-clash')] : once(speaker, reasons)),
      ...spread,
    ].join(' '),
  };
}

function growingText({ plant, area, stays, fixed }: Growing, speaker: Speaker): string {
  const parameters = { plant, area: speaker.rough(area, 'area') };
  return stays
    ? speaker.word('print.placing-growing-stays', parameters)
    : speaker.word(fixed ? 'print.placing-growing-fixed' : 'print.placing-growing', parameters);
}

const way = (name: string, { currency, material, money, months, places, unmet }: Figures, speaker: Speaker) => [
  name,
  speaker.rough(currency, 'mass'),
  speaker.rough(material, 'mass'),
  money === undefined ? '–' : speaker.money(money),
  String(months),
  String(places),
  speaker.rough(unmet, 'area'),
];
