import type { Recorder } from '../derivation/derivation.ts';
import { carbonateOf } from '../evidence/carbonate.ts';
import { type PresentPh, presentPh } from '../evidence/present-ph.ts';
import type { SoilTest } from '../evidence/soil-test.ts';
import { bedRecord } from '../learning/bed-record.ts';
import { checkRecord } from '../learning/check.ts';
import { learn } from '../learning/learn.ts';
import { ownResponse } from '../learning/reading.ts';
import type { BedRecord, Learned, LearnOptions } from '../learning/types.ts';
import { type ReconcileInput, reconcile } from '../requirement/reconcile.ts';
import type { Reconciled } from '../requirement/reconcile-types.ts';
import { type FreeLime, freeLimeOf } from '../soil/free-lime.ts';
import { layerOf } from '../soil/layer.ts';
import type { Layer, Texture } from '../soil/soil.ts';
import { textureOf } from '../soil/texture-of.ts';
import { highestLead, newestLaboratory } from './around.ts';
import type { Place, Settings } from './place.ts';
import { standingLayer } from './pot-layer.ts';
import type { Target } from './recommendation.ts';

/** What is known of one place, before anything is decided. */
export interface Evidence {
  /** Newest laboratory test. */
  readonly latest: SoilTest | undefined;
  readonly texture: Texture | undefined;
  /** Treated layer; for pots one cubic metre of mix, so that rates come out per volume. */
  readonly layer: Layer;
  readonly present: PresentPh | undefined;
  readonly freeLime: FreeLime | undefined;
  readonly lead: number | undefined;
  /** Undefined while nothing has to be changed or the plants share no pH, unless a curve was asked for. */
  readonly reconciled: Reconciled | undefined;
  /** What earlier applications and retests of this place have taught; undefined when there are none. */
  readonly learned: Learned | undefined;
}

/**
 * Gathers what the tests and the place say, each through its own room.
 *
 * @param recorder keeps the derivation when one is wanted
 * @param always works out the curve even when nothing has to be changed, for a forecast
 * @param lesson what the record has taught, when it is known near enough: then nothing is learned anew
 */
export function gather(
  place: Place,
  target: Target,
  settings: Settings,
  recorder?: Recorder,
  always = false,
  lesson?: Learned,
): Evidence {
  const tests = newestFirst(place.tests);
  const latest = newestLaboratory(tests);
  const texture = place.texture ?? (latest === undefined ? undefined : textureOf(latest));
  const organicMatter = place.organicMatter ?? latest?.organicMatter;
  const layer = layerOf(
    {
      medium: place.medium,
      depth: place.kind === 'container' ? 1 : place.depth,
      bulkDensity: place.bulkDensity,
      texture,
      organicMatter,
      coarseFragments: place.coarseFragments,
      dug: place.situation !== 'lawn',
    },
    recorder,
  );
  const present = presentPh(
    tests,
    settings.today,
    { applications: place.applications, hemisphere: settings.hemisphere, media: place.medium === 'soilless' },
    recorder,
  );
  const freeLime = present === undefined ? undefined : freeLimeOf(carbonateOf(tests), present.mean);
  const lead = highestLead(tests);
  const found = { latest, texture, layer, present, freeLime, lead, reconciled: undefined, learned: undefined };
  if (present === undefined) return found;
  const lowering = present.mean > target.high;
  if (!always) {
    if (target.conflicts.length > 0 || (!lowering && present.mean >= target.low)) return found;
    // No figure is worked out for a change that is refused anyway.
    if (lowering && place.kind !== 'container' && freeLime !== undefined && FORBIDS_ACID.has(freeLime.class))
      return found;
  }
  const input: { -readonly [Key in keyof ReconcileInput]: ReconcileInput[Key] } = {
    present,
    targetPh: target.aim,
    layer,
    medium: place.medium,
    tests,
    direction: lowering ? 'lower' : 'raise',
    carbonate: freeLime?.carbonate.fraction ?? 0,
  };
  if (texture !== undefined) input.texture = texture;
  if (organicMatter !== undefined) input.organicMatter = organicMatter;
  if (settings.region !== undefined) input.region = settings.region;
  if (place.applications.length === 0 || tests.length < 2) return { ...found, reconciled: reconcile(input, recorder) };
  // What the bed answered to earlier doses is read against everything else first, then counted with it.
  const before = reconcile(input);
  if (before.curve === undefined) return { ...found, reconciled: reconcile(input, recorder) };
  const standing = standingLayer(place, layer);
  const record = bedRecord(place, standing, before.curve, [], settings.weather, place.yearly);
  const options = { today: settings.today, targetPh: target.aim };
  // A record that no model can follow teaches nothing; the plan rests on the rest.
  if (checkRecord(record, options).length > 0) return { ...found, reconciled: reconcile(input, recorder) };
  const learned =
    lesson !== undefined
      ? readAgain(lesson, record, target.aim)
      : recorder
        ? learn(record, options, recorder)
        : remembered(record, options);
  if (learned.reading !== undefined) input.readings = [learned.reading];
  return { ...found, learned, reconciled: reconcile(input, recorder) };
}

/**
 * The last lesson of each record, kept because a screen asks for the same one again and again while a slider moves. The
 * answer depends on nothing but the record and the day, so asking again would give the same.
 */
const lessons = new WeakMap<readonly SoilTest[], { readonly asked: string; readonly learned: Learned }>();

function remembered(record: BedRecord, options: LearnOptions): Learned {
  const { tests, ...rest } = record;
  const asked = JSON.stringify([rest, options]);
  const known = lessons.get(tests);
  if (known?.asked === asked) return known.learned;
  const learned = learn(record, options);
  lessons.set(tests, { asked, learned });
  return learned;
}

/** A lesson with its reading put onto another curve, layer or aim: how the bed differs from what was expected stays. */
function readAgain(lesson: Learned, { curve, layer }: BedRecord, aim: number): Learned {
  const { reading, present, resistance } = lesson;
  if (reading === undefined || present === undefined) return lesson;
  const again = ownResponse(resistance, curve, layer, present.mean, aim);
  return again === undefined ? lesson : { ...lesson, reading: again };
}

const FORBIDS_ACID: ReadonlySet<FreeLime['class']> = new Set([
  'small beds only',
  'do not acidify in ground',
  'test first',
]);

function newestFirst(tests: readonly SoilTest[]): readonly SoilTest[] {
  for (let i = 1; i < tests.length; i++)
    if ((tests[i] as SoilTest).date > (tests[i - 1] as SoilTest).date)
      return [...tests].sort((a, b) => (a.date < b.date ? 1 : a.date > b.date ? -1 : 0));
  return tests;
}
