import type { MessageCode } from '@sorrel/almanac/words';
import type { Instrument, PhMethod, SoilTest } from '@sorrel/engine/evidence';
import type { Place, Recommendation } from '@sorrel/engine/plan';
import { printPh } from '@sorrel/engine/units';
import type { Speaker } from '../speaker.ts';
import { conflictText } from './ph-line.ts';

/** What kind of place it is and how large: `bed, 96 sq ft, treated 6 in deep`. */
export function extent(place: Place, speaker: Speaker): string {
  const kind = kindOf(place, speaker);
  return place.kind === 'container'
    ? speaker.word('print.extent-pots', { kind, volume: speaker.amount(place.volume ?? 0, 'volume') })
    : speaker.word('print.extent-ground', {
        kind,
        area: speaker.amount(place.area, 'area'),
        depth: speaker.rough(place.depth, 'length'),
      });
}

/** The same without the depth, for labels: `bed, 96 sq ft`. */
export const shortExtent = (place: Place, speaker: Speaker): string =>
  place.kind === 'container'
    ? extent(place, speaker)
    : speaker.word('print.extent-label', { kind: kindOf(place, speaker), area: speaker.amount(place.area, 'area') });

const kindOf = (place: Place, speaker: Speaker): string =>
  speaker.word(`print.kind-${place.situation === 'lawn' ? 'lawn' : place.kind}` as MessageCode);

const methods: Readonly<Record<PhMethod, readonly [MessageCode, string]>> = {
  'water-1:1': ['print.ph-method-water', '1:1'],
  'water-1:2': ['print.ph-method-water', '1:2'],
  'water-1:2.5': ['print.ph-method-water', '1:2.5'],
  'water-1:5': ['print.ph-method-water', '1:5'],
  'water-paste': ['print.ph-method-paste', ''],
  'cacl2-0.01M': ['print.ph-method-cacl2', ''],
  'kcl-1M': ['print.ph-method-kcl', ''],
  unstated: ['print.ph-method-unstated', ''],
  'media-1:2': ['print.ph-method-media', '1:2'],
  'media-extract': ['print.ph-method-extract', ''],
  'pour-through': ['print.ph-method-pour', ''],
};

const instruments: Readonly<Record<Instrument, MessageCode>> = {
  laboratory: 'print.by-laboratory',
  'slurry-meter': 'print.by-slurry',
  'colour-kit': 'print.by-kit',
  strip: 'print.by-strip',
  probe: 'print.by-probe',
};

/** Every pH reading of a place with its method, who read it and when, the newest first. At most three. */
export function phReadings(place: Place, speaker: Speaker): string[] {
  return place.tests
    .filter((test) => test.ph !== undefined)
    .sort((a, b) => (a.date < b.date ? 1 : -1))
    .slice(0, 3)
    .map((test) => phReading(test, speaker));
}

function phReading(test: SoilTest, speaker: Speaker): string {
  const [method, ratio] = methods[test.ph?.method ?? 'unstated'];
  return speaker.word('print.ph-read', {
    ph: printPh(test.ph?.value ?? Number.NaN),
    method: speaker.word(method, { ratio }),
    by: test.laboratory ?? speaker.word(instruments[test.instrument]),
    date: speaker.day(test.date),
  });
}

/** What pH is wanted and for whom; plants whose range is from memory carry the mark. */
export function targetText(place: Place, advice: Recommendation, speaker: Speaker): string {
  const { target } = advice;
  if (target.conflicts.length > 0) return conflictText(advice, speaker);
  const figures = { low: printPh(target.low), high: printPh(target.high), aim: printPh(target.aim) };
  if (target.basis === 'own figures') return speaker.word('print.target-own', figures);
  if (target.basis === 'default') return speaker.word('print.target-default', figures);
  const mark = speaker.word('print.memory-mark');
  const plants = place.plants.map((plant) => plant.name + (plant.basis === 'memory' ? mark : ''));
  return speaker.word('print.target-plants', { ...figures, plants: speaker.list(plants) });
}
