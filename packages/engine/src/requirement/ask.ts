import type { Message } from '../derivation/message.ts';
import type { Medium, Texture } from '../soil/soil.ts';
import type { Fraction } from '../units/si.ts';
import { adamsEvans } from './adams-evans.ts';
import { brBaseSaturation } from './br-base-saturation.ts';
import { kansas } from './kansas.ts';
import type { Reading, RequirementMethod } from './method.ts';
import { ncMehlich } from './nc-mehlich.ts';
import { nswEcec } from './nsw-ecec.ts';
import { osuSikora } from './osu-sikora.ts';
import { psuMehlich } from './psu-mehlich.ts';
import { names } from './region.ts';
import { smpTristate } from './smp-tristate.ts';
import { ugaLbc } from './uga-lbc.ts';

/** What a laboratory of a method's region calls the figure; the first that serves a region is asked for. */
const asked: readonly (readonly [RequirementMethod, string])[] = [
  [{ ...ugaLbc, regions: ['Georgia'] }, 'lime buffer capacity'],
  [osuSikora, 'Sikora buffer pH'],
  [smpTristate, 'SMP or Sikora buffer pH'],
  [kansas, 'SMP buffer pH'],
  [adamsEvans, 'Adams-Evans buffer pH'],
  [ncMehlich, 'buffer acidity (Ac)'],
  [psuMehlich, 'exchangeable acidity'],
  [brBaseSaturation, 'cation exchange capacity at pH 7 and base saturation'],
  [nswEcec, 'exchangeable cations with aluminium'],
];

const ASK_BUFFER: Message = { code: 'requirement.ask-buffer' };
const ASK_PRINTED: Message = { code: 'requirement.ask-printed-rate' };
const ASK_TEXTURE: Message = { code: 'requirement.ask-texture' };
const ASK_MATTER: Message = { code: 'requirement.ask-organic-matter' };
const ASK_REGION: Message = { code: 'requirement.ask-region' };
const ASK_AGAIN: Message = { code: 'requirement.ask-again' };
const ASK_JAR: Message = { code: 'requirement.ask-jar' };
const HALF_DOSE: Message = { code: 'requirement.half-dose' };
const NOTHING: readonly Message[] = [];
const ONLY_BUFFER: readonly Message[] = [ASK_BUFFER];
const ONLY_JAR: readonly Message[] = [ASK_JAR];

function bufferOf(region: string | undefined): Message {
  if (region !== undefined)
    for (const [method, what] of asked)
      if (names(method.regions, region)) return { code: 'requirement.ask-buffer-named', parameters: { what } };
  return ASK_BUFFER;
}

export interface AskInput {
  readonly medium: Medium;
  readonly texture?: Texture;
  readonly organicCarbon?: Fraction;
  readonly region?: string;
  /** The newest test, whose laboratory may say its region. */
  readonly test: { readonly region?: string };
}

/**
 * What to find out next to narrow the answer, best first.
 *
 * @param used readings that spoke
 * @param unusable a buffer pH was given that no trusted table reads
 */
export function whatToAsk(
  input: AskInput,
  used: readonly Reading[],
  disagree: boolean,
  unusable: boolean,
): readonly Message[] {
  if (input.medium === 'soilless') return ONLY_JAR;
  let measured = false;
  let texture = false;
  let foreign = true;
  for (const { kind, calibrationSd } of used)
    if (kind === 'texture') texture = true;
    else if (kind !== 'texture and organic matter' && kind !== 'medium') {
      measured = true;
      if (calibrationSd === undefined || calibrationSd < 0.4) foreign = false;
    }
  const place = input.test.region ?? input.region;
  if (measured) {
    const region = foreign && place === undefined;
    if (!disagree && !region) return NOTHING;
    return [...(disagree ? [ASK_AGAIN] : []), ...(region ? [ASK_REGION] : [])];
  }
  const buffer = unusable ? ASK_PRINTED : bufferOf(place);
  if (used.length > 0 && !texture && !disagree) return buffer === ASK_BUFFER ? ONLY_BUFFER : [buffer];
  return [
    ...(disagree ? [ASK_AGAIN] : []),
    ...(texture ? [HALF_DOSE] : []),
    buffer,
    ...(input.texture === undefined ? [ASK_TEXTURE] : []),
    ...(input.organicCarbon === undefined ? [ASK_MATTER] : []),
  ];
}
