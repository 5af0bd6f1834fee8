import { type PhConversionRow, phConversions } from '@sorrel/almanac/ph-conversions';
import {
  applyEquation,
  averagePh,
  changeBeyondError,
  coresNeeded,
  type EquationFacts,
  invertEquation,
  springRange,
} from '../../packages/engine/src/evidence/index.ts';
import type { Adapter, CheckCase } from '../adapter.ts';

type Figures = Readonly<Record<string, unknown>>;

const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);

interface Scale {
  readonly family: 'water' | 'cacl2' | 'kcl';
  /** Parts of liquid to one of soil, when said. */
  readonly ratio?: string;
}

const families: Readonly<Record<string, Scale['family']>> = {
  w: 'water',
  water: 'water',
  h2o: 'water',
  ca: 'cacl2',
  cacl2: 'cacl2',
  kcl: 'kcl',
};

/** `pHw`, `pHCa`, `pHKCl`, `pHw5`, `pHw_1:2.5`. */
function scaleOf(key: string): Scale | undefined {
  const match = /^ph_?(water|h2o|w|cacl2|ca|kcl)_?(?:1[:_])?(\d+(?:\.\d+)?)?$/i.exec(key);
  const family = families[match?.[1]?.toLowerCase() ?? ''];
  return family && { family, ...(match?.[2] !== undefined && { ratio: match[2] }) };
}

/** Scale of an equation's side: `water-1:5`, `kcl-1M` (1:2.5), `water` (any). */
function sideOf(side: string): Scale {
  const [family = 'water', rest = ''] = side.split('-');
  const ratio = /1:(\d+(?:\.\d+)?)/.exec(rest)?.[1] ?? (rest === '1M' || rest === '0.01M' ? '2.5' : undefined);
  return { family: family as Scale['family'], ...(ratio !== undefined && { ratio }) };
}

const agrees = (asked: Scale, has: Scale): number => {
  if (asked.ratio === undefined || has.ratio === undefined) return 0;
  return asked.ratio === has.ratio ? 3 : -5;
};

const pick = (inputs: Figures, names: readonly string[]): number | undefined =>
  names.map((name) => inputs[name]).find(isNumber);

const saltOf = (inputs: Figures): number | undefined => pick(inputs, ['EC', 'ec', 'EC_dS_m', 'ec_dS_m', 'EC_1_5']);
const organicOf = (inputs: Figures): number | undefined =>
  pick(inputs, ['OM_pct', 'om_pct', 'OM', 'organic_matter_pct']);
const clayOf = (inputs: Figures): number | undefined => pick(inputs, ['clay_pct', 'clay']);

/** How well an equation fits what a case says of source, ratio and soil; undefined when it cannot be used. */
function fitness(row: PhConversionRow, check: CheckCase, from: Scale, to: Scale): number | undefined {
  const [a, b] = [sideOf(row.from), sideOf(row.to)];
  if (a.family !== from.family || b.family !== to.family) return undefined;
  const { inputs } = check;
  if (row.per_ec !== undefined && saltOf(inputs) === undefined) return undefined;
  let score = agrees(from, a) + agrees(to, b);
  const sources = check.source.split(/[;,]\s*/);
  if (row.sources.some((key) => sources.includes(key))) score += 10;
  if (row.per_ec !== undefined) score += 2;
  const soil = ['soil', 'texture', 'medium']
    .map((key) => String(inputs[key] ?? ''))
    .join(' ')
    .toLowerCase();
  const clay = clayOf(inputs);
  if (row.id.endsWith('-clay') && (soil.includes('clay') || (clay !== undefined && clay > 20))) score += 4;
  if (row.id.endsWith('-peat') && (soil.includes('peat') || soil.includes('organic'))) score += 6;
  if (row.id.endsWith('-sand') && (soil.includes('sand') || (clay ?? 99) <= 20 || organicOf(inputs) !== undefined))
    score += 3;
  return score;
}

interface Plan {
  readonly row: PhConversionRow;
  readonly backwards: boolean;
  readonly value: number;
  readonly key: string;
}

function conversionOf(check: CheckCase): Plan | undefined {
  const given = Object.entries(check.inputs).filter(([key]) => scaleOf(key) !== undefined);
  const wanted = Object.keys(check.expected);
  const [name, value] = given[0] ?? [];
  const [key] = wanted;
  if (given.length !== 1 || wanted.length !== 1 || name === undefined || key === undefined || !isNumber(value))
    return undefined;
  const ratio = /^1:(\d+(?:\.\d+)?)$/.exec(String(check.inputs.ratio ?? ''))?.[1];
  const asked = scaleOf(name);
  const to = scaleOf(key);
  if (asked === undefined || to === undefined || !isNumber(check.expected[key])) return undefined;
  const from = ratio === undefined ? asked : { ratio, ...asked };
  let best: (Plan & { score: number }) | undefined;
  for (const row of phConversions)
    for (const backwards of [false, true]) {
      const score = backwards ? fitness(row, check, to, from) : fitness(row, check, from, to);
      if (score === undefined) continue;
      const weighed = backwards ? score - 4 : score;
      if (best === undefined || weighed > best.score) best = { row, backwards, value, key, score: weighed };
    }
  return best;
}

const conversion: Adapter = {
  name: 'evidence: pH of another method',
  accepts: (check) => conversionOf(check) !== undefined,
  compute(check) {
    const plan = conversionOf(check);
    if (plan === undefined) return {};
    const salt = saltOf(check.inputs);
    const organic = organicOf(check.inputs);
    const facts: EquationFacts = {
      ...(salt !== undefined && { conductivity: salt / 10 }),
      ...(organic !== undefined && { organicMatter: organic / 100 }),
    };
    const { row, value, key } = plan;
    return { [key]: plan.backwards ? invertEquation(row, value, facts) : applyEquation(row, value, facts) };
  },
};

const composite: Adapter = {
  name: 'evidence: mean of cores',
  accepts: ({ inputs, expected }) =>
    Array.isArray(inputs.pH) &&
    inputs.pH.every(isNumber) &&
    inputs.pH.length > 0 &&
    Object.keys(expected).join() === 'pH' &&
    isNumber(expected.pH),
  compute: ({ inputs }) => ({ pH: averagePh(inputs.pH as number[]) }),
};

/** z of a stated confidence, or as given. */
function zOf(inputs: Figures): number {
  if (isNumber(inputs.z)) return inputs.z;
  const stated = pick(inputs, ['confidence', 'confidence_pct', 'level']);
  const share = stated === undefined ? 0.95 : stated > 1 ? stated / 100 : stated;
  return share === 0.9 ? 1.645 : share === 0.99 ? 2.576 : share === 0.8 ? 1.282 : 1.96;
}

const spread = (inputs: Figures): number | undefined => pick(inputs, ['sd', 's', 'core_SD', 'core_sd', 'sd_core']);
const half = (inputs: Figures): number | undefined => pick(inputs, ['E', 'half_width', 'halfwidth', 'error']);

const cores: Adapter = {
  name: 'evidence: cores for an error',
  accepts: ({ inputs, expected }) =>
    spread(inputs) !== undefined &&
    half(inputs) !== undefined &&
    Object.keys(expected).every((key) => ['n', 'cores', 'cores_95', 'cores_90'].includes(key)),
  compute({ inputs, expected }) {
    const of = (z: number) => coresNeeded(spread(inputs) ?? 0, half(inputs) ?? 0, z);
    return Object.fromEntries(
      Object.keys(expected).map((key) => [
        key,
        of(key === 'cores_95' ? 1.96 : key === 'cores_90' ? 1.645 : zOf(inputs)),
      ]),
    );
  },
};

const difference: Adapter = {
  name: 'evidence: change beyond error',
  accepts: ({ inputs, expected }) =>
    isNumber(inputs.sd) &&
    half(inputs) === undefined &&
    Object.keys(expected).length === 1 &&
    /change|difference|detectable|LSD/i.test(Object.keys(expected)[0] ?? ''),
  compute: ({ inputs, expected }) => ({
    [Object.keys(expected)[0] ?? '']: changeBeyondError(Number(inputs.sd), Number(inputs.sd), zOf(inputs)),
  }),
};

const season: Adapter = {
  name: 'evidence: autumn against spring',
  accepts: ({ inputs, expected }) =>
    isNumber(inputs.pH) &&
    /^(fall|autumn)$/i.test(String(inputs.season ?? '')) &&
    Object.keys(expected).every((key) => /^spring_pH/.test(key)),
  compute({ inputs, expected }) {
    const { low, high } = springRange(Number(inputs.pH), inputs.drought === true);
    return Object.fromEntries(
      Object.entries(expected).map(([key, value]) => [key, Array.isArray(value) ? [low, high] : (low + high) / 2]),
    );
  },
};

export const evidencePh: readonly Adapter[] = [conversion, composite, cores, difference, season];
