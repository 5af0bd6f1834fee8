import {
  BUFFER_SETS,
  bufferPhAt,
  fizzClass,
  MEDIA_METHOD_NAMES,
  type MediaMethod,
  nernstSlope,
  saltClass,
} from '../../packages/engine/src/evidence/index.ts';
import { forward, peatCompostPh, soillessCurve } from '../../packages/engine/src/soil/index.ts';
import type { Adapter, CheckCase } from '../adapter.ts';

type Figures = Readonly<Record<string, unknown>>;

const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);

const setOf = (inputs: Figures): string | undefined => {
  const name = String(inputs.set ?? '').toLowerCase();
  if (name === '') return undefined;
  return (
    BUFFER_SETS.find((set) => set.toLowerCase() === name) ?? BUFFER_SETS.find((set) => set.toLowerCase().includes(name))
  );
};

const buffers: Adapter = {
  name: 'evidence: calibration buffer at its temperature',
  accepts: ({ inputs, expected }) =>
    setOf(inputs) !== undefined &&
    isNumber(inputs.temp_C) &&
    (isNumber(inputs.nominal) ? 'pH' in expected : Object.keys(expected).every((key) => Number(key) > 0)),
  compute({ inputs, expected }) {
    const at = (nominal: number) => bufferPhAt(setOf(inputs) ?? '', nominal, Number(inputs.temp_C));
    if (isNumber(inputs.nominal)) return { pH: at(inputs.nominal) };
    return Object.fromEntries(Object.keys(expected).map((key) => [key, at(Number(key))]));
  },
};

const slopeKey = /slope|mV/i;

const slope: Adapter = {
  name: 'evidence: slope of a glass electrode',
  accepts: ({ inputs, expected }) =>
    isNumber(inputs.temp_C) &&
    Object.keys(inputs).length === 1 &&
    Object.keys(expected).length === 1 &&
    slopeKey.test(Object.keys(expected)[0] ?? ''),
  compute: ({ inputs, expected }) => ({ [Object.keys(expected)[0] ?? '']: nernstSlope(Number(inputs.temp_C)) }),
};

/** What was seen: an appearance in acid, or a fizz in vinegar unless another acid is named. */
function fizzOf({ inputs }: CheckCase) {
  if (typeof inputs.appearance === 'string')
    return fizzClass(/vinegar/i.test(String(inputs.acid ?? '')) ? 'vinegar' : 'acid', inputs.appearance);
  if (typeof inputs.fizz !== 'string') return undefined;
  const acid = /hcl|hydrochloric|muriatic/i.test(String(inputs.acid ?? inputs.reagent ?? ''));
  return fizzClass(acid ? 'acid' : 'vinegar', inputs.fizz) ?? fizzClass(acid ? 'vinegar' : 'acid', inputs.fizz);
}

const fizz: Adapter = {
  name: 'evidence: fizz',
  accepts: (check) =>
    fizzOf(check) !== undefined &&
    Object.keys(check.expected).every((key) => /caco3|carbonate|^(low|high|min|max)$|class/i.test(key)),
  compute(check) {
    const row = fizzOf(check);
    const low = row?.published_low ?? null;
    const high = row?.published_high ?? null;
    return Object.fromEntries(
      Object.entries(check.expected).map(([key, asked]) => {
        if (/class/i.test(key)) return [key, row?.class];
        if (Array.isArray(asked)) return [key, [low, high]];
        return [key, /(high|max)$/i.test(key) ? high : low];
      }),
    );
  },
};

const methodNames: Readonly<Record<string, MediaMethod>> = Object.fromEntries(
  Object.entries(MEDIA_METHOD_NAMES).map(([method, name]) => [name, method as MediaMethod]),
);

const salts: Adapter = {
  name: 'evidence: salts in a potting mix',
  accepts: ({ inputs, expected }) =>
    isNumber(inputs.EC_mS_cm) &&
    Object.keys(expected).length > 0 &&
    (String(inputs.method) in methodNames
      ? 'class' in expected
      : Object.keys(expected).every((key) => key in methodNames)),
  compute({ inputs, expected }) {
    const conductivity = Number(inputs.EC_mS_cm) / 10;
    return Object.fromEntries(
      Object.keys(expected).map((key) => {
        const method = methodNames[key === 'class' ? String(inputs.method) : key];
        return [key, method && saltClass(method, conductivity)];
      }),
    );
  },
};

const UNLIMED_PEAT = 4.5;

/**
 * Peat with lime alone goes by the titration curve from the trial's unlimed 4.5; compost is beyond it and goes by the
 * trial's own points.
 */
const peat: Adapter = {
  name: 'soil: peat, lime and compost',
  accepts: ({ inputs, expected }) => {
    const { lime_g_L: lime, compost_pct: compost } = inputs;
    const one = (value: unknown) => isNumber(value) || (Array.isArray(value) && value.every(isNumber));
    return (
      one(lime) &&
      one(compost) &&
      !(Array.isArray(lime) && Array.isArray(compost)) &&
      Object.keys(expected).join() === 'pH'
    );
  },
  compute({ inputs }) {
    const { lime_g_L: lime, compost_pct: compost } = inputs;
    if (Array.isArray(compost)) return { pH: compost.map((share: number) => peatCompostPh(Number(lime), share / 100)) };
    const ph = (rate: number) =>
      compost === 0 ? forward(soillessCurve(), UNLIMED_PEAT, rate) : peatCompostPh(rate, Number(compost) / 100);
    return { pH: Array.isArray(lime) ? lime.map(ph) : ph(Number(lime)) };
  },
};

export const evidenceReadings: readonly Adapter[] = [buffers, slope, fizz, salts, peat];
