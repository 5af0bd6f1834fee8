import type { Recorder } from '../derivation/derivation.ts';
import type { Message } from '../derivation/message.ts';
import { organicCarbonOf } from '../evidence/organic-matter.ts';
import { toWaterPh } from '../evidence/ph-conversion/to-water-ph.ts';
import type { SoilTest } from '../evidence/soil-test.ts';
import { curveShape } from '../soil/buffer-curve.ts';
import type { BufferCurve, Layer, Medium, PhEstimate, Texture } from '../soil/soil.ts';
import type { Fraction, Ph } from '../units/si.ts';
import { whatToAsk } from './ask.ts';
import { type Combined, combine } from './combine.ts';
import { limyReason } from './lower/limy.ts';
import type { MethodInput, Reading, RequirementMethod } from './method.ts';
import {
  acidityMethods,
  aluminiumMethods,
  bufferMethods,
  capacityMethods,
  exchangeMethods,
  lowerMethods,
  methodById,
  placeMethods,
  printedMethods,
  textureMethods,
} from './methods.ts';
import type { Reconciled } from './reconcile-types.ts';
import { calibrationSpreads, serves } from './region.ts';
import { unusableBuffer } from './unusable-buffer.ts';
import { couldSpeak, createVoices, offer, settle, speaks, type Voices } from './voices.ts';

export interface ReconcileInput {
  /** On the water scale. */
  readonly present: PhEstimate;
  readonly targetPh: Ph;
  readonly layer: Layer;
  readonly medium: Medium;
  /** Newest first. */
  readonly tests: readonly SoilTest[];
  readonly texture?: Texture;
  readonly organicCarbon?: Fraction;
  /** Used when no organic carbon is given: halved (PRIBYL_2010). */
  readonly organicMatter?: Fraction;
  readonly region?: string;
  /** Which way the pH is to go; by default from present to target. */
  readonly direction?: 'raise' | 'lower';
  /** Carbonate store, kg CaCO3/kg; default none. */
  readonly carbonate?: Fraction;
  /** pH at which free carbonate holds this soil. */
  readonly plateau?: Ph;
  /** Readings from elsewhere, such as the bed's own answer to an earlier dose. */
  readonly readings?: readonly Reading[];
}

const SULFUR_TABLES = 'published sulfur tables';
const withoutTables = lowerMethods.filter(({ kind }) => kind !== 'texture');
const sulfurTables = lowerMethods.filter(({ kind }) => kind === 'texture');

type Outside = { readonly method: string; readonly reason: Message };

const NO_TEST: SoilTest = { id: '', date: '1970-01-01', instrument: 'laboratory', depth: 0.15 };

/** Organic carbon of the place, else of the newest test that has it. */
function carbonOf(input: ReconcileInput): Fraction | undefined {
  const own = input.organicCarbon ?? organicCarbonOf(input);
  if (own !== undefined) return own;
  for (const test of input.tests) {
    const carbon = organicCarbonOf(test);
    if (carbon !== undefined) return carbon;
  }
  return undefined;
}

/** What the methods are told of one test; an older test brings its own pH, because its figures belong to it. */
function inputFor(input: ReconcileInput, test: SoilTest, carbon: Fraction | undefined, ownPh: boolean): MethodInput {
  const own = ownPh && test.ph !== undefined ? toWaterPh(test.ph, test) : undefined;
  const about: { -readonly [Key in keyof MethodInput]: MethodInput[Key] } = {
    present: own === undefined ? input.present : { mean: own.mean, sd: input.present.sd },
    targetPh: input.targetPh,
    layer: input.layer,
    medium: input.medium,
    test,
  };
  if (input.texture !== undefined) about.texture = input.texture;
  if (carbon !== undefined) about.organicCarbon = carbon;
  if (input.region !== undefined) about.region = input.region;
  return about;
}

/** Methods that cannot become the speaker of their kind, and beside each what it would have read. */
interface Silent {
  readonly methods: RequirementMethod[];
  readonly abouts: MethodInput[];
}

/** What has been heard so far. */
interface Hearing {
  readonly voices: Voices;
  readonly outside: Outside[];
  /** Kept for whoever wants to see what stands beside: reading them all costs more than the answer. */
  readonly silent: Silent;
}

/** Asks one method, and files its answer; one that is no fitter than the speaker of its kind is asked later, if at all. */
function hear(method: RequirementMethod, spread: number, about: MethodInput, test: number, hearing: Hearing): void {
  if (!couldSpeak(hearing.voices, method.kind, spread)) {
    leave(method, about, hearing.silent);
    return;
  }
  const outcome = method.read(about);
  if (outcome.state === 'reading') offer(hearing.voices, outcome.reading, test);
  else if (outcome.state === 'outside') hearing.outside.push({ method: method.id, reason: outcome.reason });
}

function hearAll(methods: readonly RequirementMethod[], about: MethodInput, test: number, hearing: Hearing): void {
  const spreads = calibrationSpreads(methods, about);
  for (let i = 0; i < methods.length; i++)
    hear(methods[i] as RequirementMethod, spreads[i] as number, about, test, hearing);
}

function leave(method: RequirementMethod, about: MethodInput, silent: Silent): void {
  silent.methods.push(method);
  silent.abouts.push(about);
}

/** Asks the methods for which the test holds something. */
function hearTest(about: MethodInput, index: number, hearing: Hearing): void {
  const { test } = about;
  if (test.limeBufferCapacity !== undefined) hearAll(capacityMethods, about, index, hearing);
  if (test.printedRate !== undefined) hearAll(printedMethods, about, index, hearing);
  if (test.buffer !== undefined) hearAll(bufferMethods, about, index, hearing);
  if (test.acidity !== undefined || test.acidityByVolume !== undefined || test.buffer?.method === 'mehlich')
    hearAll(acidityMethods, about, index, hearing);
  if (test.aluminium !== undefined) hearAll(aluminiumMethods, about, index, hearing);
  if (test.cec !== undefined || test.aluminium !== undefined) hearAll(exchangeMethods, about, index, hearing);
}

/** Reads a speaker once more, so that its steps are on record. */
function explain(reading: Reading, heard: readonly MethodInput[], recorder: Recorder): void {
  const method = methodById(reading.method);
  for (const about of heard) {
    const outcome = method?.read(about);
    if (outcome?.state !== 'reading' || outcome.reading.logBeta0 !== reading.logBeta0) continue;
    method?.read(about, recorder);
    return;
  }
}

const curveOf = (input: ReconcileInput, combined: Combined): BufferCurve => ({
  beta0: Math.exp(combined.logBeta0),
  sdLog: combined.sdLog,
  pm: curveShape.pm,
  w: curveShape.w,
  carbonate: input.carbonate ?? 0,
  plateau: input.plateau ?? curveShape.plateau,
});

/**
 * Brings every reading of the soil's resistance into one curve.
 *
 * Of each kind of evidence the fittest reading speaks (smallest calibration spread, so that the method made for the
 * region comes first), the others stand beside it; of a rate, an acidity and a buffer pH printed on one report, only one
 * speaks, because they are one measurement. Texture alone speaks when nothing says how much organic matter there is.
 * A figure from an older test is read with that test's own pH.
 *
 * @returns a curve, or none with what to find out first when only a pH is known
 * @source weights and spreads: lime-requirement section 7 (SORREL, judgement)
 */
export function reconcile(input: ReconcileInput, recorder?: Recorder): Reconciled {
  const carbon = carbonOf(input);
  const lowering = (input.direction ?? (input.targetPh < input.present.mean ? 'lower' : 'raise')) === 'lower';
  const { tests } = input;
  const hearing: Hearing = { voices: createVoices(), outside: [], silent: { methods: [], abouts: [] } };
  const { voices, outside, silent } = hearing;
  let unusable = false;

  if (input.readings !== undefined) for (const reading of input.readings) offer(voices, reading, -1);

  const heard: MethodInput[] = [];
  for (let index = 0; index < tests.length; index++) {
    const test = tests[index] as SoilTest;
    const about = inputFor(input, test, carbon, tests.length > 1);
    heard.push(about);
    if (test.buffer !== undefined) {
      const reason = unusableBuffer(test.buffer.method, test.acidity !== undefined);
      if (reason !== undefined) {
        unusable = true;
        outside.push({ method: test.buffer.method, reason });
      }
    }
    if (input.medium !== 'soilless') hearTest(about, index, hearing);
  }

  const place = inputFor(input, tests[0] ?? NO_TEST, carbon, false);
  heard.push(place);
  hearAll(placeMethods, place, -1, hearing);
  // Texture alone has no voice beside texture and organic matter, so its methods are only for those who look.
  const matter = speaks(voices, 'texture and organic matter');
  if (!matter) hearAll(textureMethods, place, -1, hearing);
  else
    for (const method of textureMethods)
      if (method.regions.length > 0 && serves(method, place)) leave(method, place, silent);
  if (lowering) {
    hearAll(withoutTables, place, -1, hearing);
    // One reason for all the tables made for soil without free lime, rather than the same one a dozen times.
    const limy = limyReason(place, SULFUR_TABLES);
    if (limy !== undefined) {
      if (input.texture !== undefined) outside.push({ method: 'lower-tables', reason: limy });
    } else if (matter) for (const method of sulfurTables) leave(method, place, silent);
    else hearAll(sulfurTables, place, -1, hearing);
  }

  const { used, beside } = settle(voices);
  if (recorder) for (const reading of used) explain(reading, heard, recorder);
  const combined = used.length === 0 ? undefined : combine(used, recorder);
  const ask = whatToAsk(place, used, combined?.disagree ?? false, unusable);
  const curve = combined === undefined ? undefined : curveOf(input, combined);
  const disagree = combined?.disagree ?? false;
  const rest = hearLater(beside, outside, silent);
  // Own getters, so that a copy of the answer sent to another thread holds what they give.
  if (curve === undefined)
    return {
      used,
      disagree,
      ask,
      get beside() {
        return rest().beside;
      },
      get outside() {
        return rest().outside;
      },
    };
  return {
    curve,
    used,
    disagree,
    ask,
    get beside() {
      return rest().beside;
    },
    get outside() {
      return rest().outside;
    },
  };
}

interface Rest {
  readonly beside: readonly Reading[];
  readonly outside: readonly Outside[];
}

/** What cannot speak anyway, read only when somebody wants to see it. */
function hearLater(beside: readonly Reading[], outside: readonly Outside[], silent: Silent): () => Rest {
  let heard: Rest | undefined;
  return () => {
    if (heard !== undefined) return heard;
    const more = [...beside];
    const out = [...outside];
    for (const [index, method] of silent.methods.entries()) {
      const outcome = method.read(silent.abouts[index] as MethodInput);
      if (outcome.state === 'reading') more.push(outcome.reading);
      else if (outcome.state === 'outside') out.push({ method: method.id, reason: outcome.reason });
    }
    heard = { beside: more, outside: out };
    return heard;
  };
}
