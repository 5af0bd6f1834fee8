import type { EvidenceKind, Reading } from './method.ts';

const slots: Readonly<Record<EvidenceKind, number>> = {
  response: 0,
  capacity: 1,
  'printed rate': 2,
  acidity: 3,
  'buffer pH': 4,
  aluminium: 5,
  'base saturation': 6,
  cec: 7,
  'texture and organic matter': 8,
  texture: 9,
  medium: 10,
};
const MATTER = slots['texture and organic matter'];
const TEXTURE = slots.texture;
const MEDIUM = slots.medium;
/** Three ways of printing one measurement, the most trusted first. */
const ONE_MEASUREMENT: readonly number[] = [slots['printed rate'], slots.acidity, slots['buffer pH']];
const NONE: readonly Reading[] = [];

/** Who speaks for each kind of evidence so far, and who stands beside. */
export interface Voices {
  readonly best: (Reading | undefined)[];
  /** Index of the test each speaker read; -1 when it read none. */
  readonly from: number[];
  readonly beside: Reading[];
}

export const createVoices = (): Voices => ({
  best: [
    undefined,
    undefined,
    undefined,
    undefined,
    undefined,
    undefined,
    undefined,
    undefined,
    undefined,
    undefined,
    undefined,
  ],
  from: [-1, -1, -1, -1, -1, -1, -1, -1, -1, -1, -1],
  beside: [],
});

export const speaks = (voices: Voices, kind: EvidenceKind): boolean => voices.best[slots[kind]] !== undefined;

/** True while a reading of that calibration spread would become the speaker of its kind. */
export function couldSpeak(voices: Voices, kind: EvidenceKind, spread: number): boolean {
  const before = voices.best[slots[kind]];
  return before === undefined || spread < spreadOf(before) - 1e-9;
}

const spreadOf = (reading: Reading): number => reading.calibrationSd ?? reading.sdLog;
const isFitter = (one: Reading, other: Reading): boolean => spreadOf(one) < spreadOf(other) - 1e-9;

/** Lets a reading speak for its kind when it is fitter than the one before; on a tie the earlier stays. */
export function offer(voices: Voices, reading: Reading, test: number): void {
  const slot = slots[reading.kind];
  const before = voices.best[slot];
  if (before === undefined || isFitter(reading, before)) {
    if (before !== undefined) voices.beside.push(before);
    voices.best[slot] = reading;
    voices.from[slot] = test;
  } else voices.beside.push(reading);
}

function silence(voices: Voices, slot: number): void {
  const reading = voices.best[slot];
  if (reading !== undefined) voices.beside.push(reading);
  voices.best[slot] = undefined;
}

/** Of what one report prints about one measurement, only the fittest keeps its voice. */
function oneVoiceAMeasurement(voices: Voices): void {
  let keeper = -1;
  for (const slot of ONE_MEASUREMENT) {
    const reading = voices.best[slot];
    if (reading === undefined) continue;
    const kept = keeper < 0 ? undefined : voices.best[keeper];
    if (kept === undefined) keeper = slot;
    else if (voices.from[slot] === voices.from[keeper]) {
      const loser = isFitter(reading, kept) ? keeper : slot;
      silence(voices, loser);
      if (loser === keeper) keeper = slot;
    }
  }
}

/**
 * Readings that speak together, and those that stand beside. Texture alone is silent once texture and organic matter
 * speak; a guess from the medium alone is silent once anything speaks.
 */
export function settle(voices: Voices): { readonly used: readonly Reading[]; readonly beside: readonly Reading[] } {
  oneVoiceAMeasurement(voices);
  if (voices.best[MATTER] !== undefined) silence(voices, TEXTURE);
  const guess = voices.best[MEDIUM];
  const used: Reading[] = [];
  for (let slot = 0; slot < voices.best.length; slot++) {
    const reading = voices.best[slot];
    if (reading !== undefined && slot !== MEDIUM) used.push(reading);
  }
  if (guess !== undefined) (used.length === 0 ? used : voices.beside).push(guess);
  return { used, beside: voices.beside.length === 0 ? NONE : voices.beside };
}
