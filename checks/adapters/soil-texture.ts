import type { TextureClass } from '../../packages/engine/src/evidence/soil-test.ts';
import {
  nearbyClasses,
  normaliseParts,
  polygonClass,
  settlingTime,
  type TextureParts,
  textureByFeel,
  textureClass,
  textureClassUk,
  textureCode,
  textureNamed,
  textureNotes,
} from '../../packages/engine/src/soil/index.ts';
import type { Adapter, CheckCase } from '../adapter.ts';

type Figures = Readonly<Record<string, unknown>>;

const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);

/** Sizes of a case as fractions, from percent or fractions, not yet scaled to 1. */
function partsOf(inputs: Figures): TextureParts | undefined {
  const sizes = ['sand', 'silt', 'clay'].map((name) => inputs[name] ?? inputs[`${name}_pct`]);
  const [sand, silt, clay] = sizes;
  if (!isNumber(sand) || !isNumber(silt) || !isNumber(clay)) return undefined;
  const scale = sand + silt + clay > 2 ? 100 : 1;
  return { sand: sand / scale, silt: silt / scale, clay: clay / scale };
}

/** A class in the manner it is asked for: as a code where a code is printed, else as words. */
const inKind = (name: TextureClass, asked: unknown): string => {
  if (typeof asked !== 'string' || textureNamed(asked) === asked.toLowerCase()) return name;
  return asked === asked.toLowerCase() ? textureCode(name).toLowerCase() : textureCode(name);
};

const ukSystem = (system: unknown): boolean => typeof system === 'string' && /uk|ssew|england|ahdb/i.test(system);

const classes: Adapter = {
  name: 'soil: texture class',
  accepts: ({ inputs, expected }) =>
    partsOf(inputs) !== undefined &&
    Object.keys(expected).every((key) => ['class', 'rules', 'polygon', 'warning', 'reported', 'near'].includes(key)),
  compute({ inputs, expected }) {
    const given = partsOf(inputs);
    const parts = given && normaliseParts(given);
    if (given === undefined || parts === undefined) return { class: 'sizes do not add up' };
    const name = textureClass(parts);
    const ours: Record<string, unknown> = {};
    const sum = textureNotes(given).find((note) => note.code === 'evidence.texture-sum')?.parameters?.sum;
    for (const [key, asked] of Object.entries(expected)) {
      if (key === 'warning') ours[key] = sum === undefined ? '' : `sum ${sum}`;
      else if (key === 'polygon') ours[key] = inKind(polygonClass(parts) ?? name, asked);
      // A word that differs from the sizes cannot be known from them; close to a line we show the class beyond it.
      else if (key === 'reported' || key === 'near') ours[key] = inKind(nearbyClasses(parts)[0] ?? name, asked);
      else if (ukSystem(inputs.system)) {
        const om = inputs.om_pct ?? inputs.organic_matter_pct;
        ours[key] = textureClassUk(parts, isNumber(om) ? om / 100 : undefined);
      } else ours[key] = inKind(name, asked);
    }
    return ours;
  },
};

/** Ribbon in metres. */
function ribbonOf(inputs: Figures): number | undefined {
  const units = { ribbon_in: 0.0254, ribbon_cm: 0.01, ribbon_mm: 0.001 };
  for (const [key, metres] of Object.entries(units)) {
    const value = inputs[key];
    if (isNumber(value)) return value * metres;
  }
  return undefined;
}

const feel: Adapter = {
  name: 'soil: texture by feel',
  accepts: ({ inputs, expected }) => ribbonOf(inputs) !== undefined && 'class' in expected,
  compute({ inputs, expected }) {
    const word = String(inputs.feel ?? '');
    const touch = /grit|sand/i.test(word) ? 'gritty' : /smooth|silk/i.test(word) ? 'smooth' : 'neither';
    const read = textureByFeel({ ball: inputs.ball !== false, ribbon: ribbonOf(inputs) ?? 0, feel: touch });
    return { class: inKind(read.name, expected.class) };
  },
};

const grain = /(\d*\.?\d+)\s*mm_(s|min|h)$/;
const SECONDS: Readonly<Record<string, number>> = { s: 1, min: 60, h: 3600 };

const settling: Adapter = {
  name: 'soil: settling in a jar',
  accepts: ({ inputs, expected }) =>
    isNumber(inputs.depth_cm) &&
    Object.keys(expected).length > 0 &&
    Object.keys(expected).every((key) => grain.test(key)),
  compute({ inputs, expected }: CheckCase) {
    const temperature = isNumber(inputs.temp_C) ? inputs.temp_C : 20;
    return Object.fromEntries(
      Object.keys(expected).map((key) => {
        const [, size = '', unit = 's'] = grain.exec(key) ?? [];
        const seconds = settlingTime(Number(size) / 1000, Number(inputs.depth_cm) / 100, temperature);
        return [key, seconds / (SECONDS[unit] ?? 1)];
      }),
    );
  },
};

export const soilTexture: readonly Adapter[] = [classes, feel, settling];
