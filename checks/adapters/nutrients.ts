import { findPlant } from '@sorrel/almanac/plants';
import type { Extractant } from '../../packages/engine/src/evidence/soil-test.ts';
import {
  type Answers,
  acidShare,
  classOf,
  diseaseRisk,
  diseaseTarget,
  diseaseTrend,
  extractantsFor,
  findDisease,
  freeIonFactor,
  isHost,
  type LevelTable,
  manganeseIndex,
  nutrientOf,
  potFlag,
  symptomCandidates,
  worstAndLeast,
} from '../../packages/engine/src/nutrients/index.ts';
import { plantRangeOf } from '../../packages/engine/src/plan/plant-range.ts';
import type { Adapter, CheckCase } from '../adapter.ts';
import { answersOf } from './symptom-answers.ts';

type Inputs = CheckCase['inputs'];
const number = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);
const text = (value: unknown): value is string => typeof value === 'string' && value !== '';
const expects = (check: CheckCase, ...keys: string[]) => keys.some((key) => key in check.expected);
const texts = (value: unknown): value is string[] => Array.isArray(value) && value.length > 0 && value.every(text);
const numbers = (value: unknown): value is number[] => Array.isArray(value) && value.length > 0 && value.every(number);

/** Extractant words as reports write them. */
const EXTRACTANTS: readonly (readonly [RegExp, LevelTable])[] = [
  [/^dtpa.*(sme|media|soilless)|^(sme|media).*dtpa/, 'dtpa-sme'],
  [/mehlich.*index/, 'mehlich-3-index'],
  [/mehlich/, 'mehlich-3'],
  [/dtpa/, 'dtpa'],
  [/bray/, 'bray-p1'],
  [/olsen|bicarbonate/, 'olsen'],
  [/acetate/, 'ammonium-acetate'],
  [/hot.?water/, 'hot-water'],
  [/sulfate/, 'sulfate-s'],
  [/sme|saturated|media|soilless/, 'sme'],
  [/tissue/, 'tissue'],
];
const VALUE_KEYS = ['lb_per_acre', 'mg_per_kg', 'ppm', 'mg_per_l', 'value', 'level'] as const;

function tableOf(inputs: Inputs): LevelTable | undefined {
  const named = inputs.extractant ?? inputs.method ?? inputs.test;
  if (text(named)) return EXTRACTANTS.find(([pattern]) => pattern.test(named.toLowerCase()))?.[1];
  // Without a name the unit tells: only one table prints pounds an acre, and only the mixes speak of an analysis.
  if ('analysis' in inputs) return 'sme';
  if ('lb_per_acre' in inputs) return 'mehlich-3';
  const nutrient = String(inputs.nutrient);
  return ('mg_per_kg' in inputs || 'ppm' in inputs) && extractantsFor(nutrient).includes('dtpa') ? 'dtpa' : undefined;
}

const nutrientIn = (inputs: Inputs): string => {
  const name = String(inputs.nutrient ?? inputs.analysis ?? inputs.element);
  return nutrientOf(name) ?? name;
};
const valueKey = (inputs: Inputs) => VALUE_KEYS.find((key) => number(inputs[key]));

function levelClass(inputs: Inputs): string {
  const [key, table, nutrient] = [valueKey(inputs), tableOf(inputs), nutrientIn(inputs)];
  if (key === undefined || table === undefined) throw new Error('no level, or no extractant');
  const standard = text(inputs.standard) ? inputs.standard : undefined;
  const unit = classOf(nutrient, table, 0, standard)?.unit;
  const value = Number(inputs[key]);
  // 1 mg/kg is 2 lb/acre (osu-circ587).
  const factor =
    key === 'lb_per_acre' && unit !== 'lb/acre'
      ? 0.5
      : key !== 'lb_per_acre' && key !== 'value' && unit === 'lb/acre'
        ? 2
        : 1;
  const found = classOf(nutrient, table, value * factor, standard);
  if (found === undefined) throw new Error(`no classes of ${nutrient} by ${table satisfies Extractant | string}`);
  return found.class;
}

const diseaseIn = ({ inputs }: CheckCase) => {
  const disease = text(inputs.disease) ? findDisease(inputs.disease) : undefined;
  if (disease === undefined) throw new Error(`no disease is called ${String(inputs.disease)}`);
  if (text(inputs.crop) && !isHost(disease, inputs.crop)) throw new Error(`${inputs.crop} does not catch it`);
  return disease;
};

const plantIn = (name: string) => {
  const row = findPlant(name);
  if (row === undefined) throw new Error(`no plant is called ${name}`);
  return plantRangeOf(row);
};

/** Which acid a fraction is of; only the heading and the note of such a case name it. */
function acidIn(check: CheckCase): readonly ['phosphate' | 'boric acid' | 'ammonium', number] {
  const words = [check.inputs.substance, check.inputs.species, check.title, check.note].join(' ').toLowerCase();
  if (/boric|boron/.test(words)) return ['boric acid', /borate|charged form/.test(words) ? 1 : 0];
  if (/hpo4\(?2-|hpo4-2|monohydrogen/.test(words.replace(/h2po4/g, ''))) return ['phosphate', 2];
  if (/phosph|po4/.test(words)) return ['phosphate', 1];
  if (/ammoni/.test(words)) return ['ammonium', /as ammonia|nh3/.test(words) ? 1 : 0];
  throw new Error('no acid is named');
}

export const nutrients: Adapter[] = [
  {
    name: 'manganese availability index',
    accepts: ({ inputs, expected }) =>
      number(inputs.mn_ppm) && number(inputs.ph) && ('index' in expected || 'class' in expected),
    compute({ inputs }) {
      const index = manganeseIndex(Number(inputs.mn_ppm) * 1e-6, Number(inputs.ph));
      return { index, class: classOf('Mn', 'mehlich-3-index', index)?.class };
    },
  },
  {
    name: 'form of a dissolved acid',
    accepts: (check) => number(check.inputs.ph) && Object.keys(check.expected).join() === 'fraction',
    compute: (check) => ({ fraction: acidShare(...acidIn(check), Number(check.inputs.ph)) }),
  },
  {
    name: 'change of a free ion',
    accepts: ({ inputs, expected }) =>
      number(inputs.ph_from) && number(inputs.ph_to) && text(inputs.element) && 'factor' in expected,
    compute: ({ inputs }) => ({
      factor: freeIonFactor(nutrientIn(inputs), Number(inputs.ph_from), Number(inputs.ph_to)),
    }),
  },
  {
    name: 'class of a nutrient level',
    accepts: ({ inputs, expected }) =>
      (text(inputs.nutrient) || text(inputs.analysis)) &&
      valueKey(inputs) !== undefined &&
      tableOf(inputs) !== undefined &&
      Object.keys(expected).join() === 'class',
    compute: ({ inputs }) => ({ class: levelClass(inputs) }),
  },
  {
    name: 'iron in a pot crop',
    accepts: ({ inputs, expected }) => text(inputs.crop) && number(inputs.ph) && 'flag' in expected,
    compute: ({ inputs }) => ({ flag: potFlag(String(inputs.crop), Number(inputs.ph)).flag }),
  },
  {
    name: 'disease as the pH moves',
    accepts: (check) =>
      text(check.inputs.disease) &&
      number(check.inputs.ph_from) &&
      number(check.inputs.ph_to) &&
      expects(check, 'incidence'),
    compute: (check) => ({
      incidence: diseaseTrend(diseaseIn(check), Number(check.inputs.ph_from), Number(check.inputs.ph_to)),
    }),
  },
  {
    name: 'disease at a pH',
    accepts: (check) => text(check.inputs.disease) && number(check.inputs.ph) && expects(check, 'risk'),
    compute(check) {
      const risk = diseaseRisk(diseaseIn(check), Number(check.inputs.ph));
      return { risk: risk.kind === 'quietened' ? risk.words : risk.kind };
    },
  },
  {
    name: 'disease over a trial',
    accepts: (check) =>
      text(check.inputs.disease) && numbers(check.inputs.tested_ph) && expects(check, 'highest_at', 'lowest_at'),
    compute(check) {
      const found = worstAndLeast(diseaseIn(check), check.inputs.tested_ph as number[]);
      const plain = (list: readonly number[] | undefined, key: string) =>
        list?.length === 1 && !Array.isArray(check.expected[key]) ? list[0] : list;
      return { highest_at: plain(found?.highest, 'highest_at'), lowest_at: plain(found?.lowest, 'lowest_at') };
    },
  },
  {
    name: 'crops and diseases of one bed',
    accepts: ({ inputs, expected }) => texts(inputs.crops) && 'compatible' in expected,
    compute({ inputs }) {
      const present = Object.entries(inputs).flatMap(([key, value]) => {
        const name = /^(.*)_present$/.exec(key)?.[1];
        return name !== undefined && value === true ? [name] : [];
      });
      const plants = (inputs.crops as string[]).map(plantIn);
      const { conflicts, limits } = diseaseTarget(plants, present);
      const apart = plants.some((a) => plants.some((b) => a.low > b.high));
      return { compatible: conflicts.length === 0 && !apart && limits.every((limit) => limit.refusedBy === undefined) };
    },
  },
  {
    name: 'symptom key',
    accepts: (check) => (text(check.inputs.leaf) || text(check.inputs.pattern)) && expects(check, 'first_candidate'),
    compute({ inputs }) {
      const answers: Answers = answersOf(inputs);
      const first = symptomCandidates(answers, {
        ...(text(inputs.crop) ? { crop: inputs.crop } : {}),
        ...(number(inputs.ph) ? { ph: inputs.ph } : {}),
        ...(inputs.medium === 'soilless' ? { medium: 'soilless' as const } : {}),
      })[0];
      return { first_candidate: first?.kind === 'lack' ? first.nutrient : first?.name };
    },
  },
];
