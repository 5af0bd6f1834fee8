import { lockups } from '@sorrel/almanac/lockups';
import type { Basis, Recorder } from '../derivation/derivation.ts';
import type { Message } from '../derivation/message.ts';
import type { NutrientLevel } from '../evidence/soil-test.ts';
import type { Medium } from '../soil/soil.ts';
import type { Ph } from '../units/si.ts';
import { usability } from './availability.ts';
import { beside } from './beside.ts';
import { extractantFault, LIMY_PHOSPHORUS } from './extractant-fit.ts';
import { classOf, type LevelClass, type LevelTable, printedLevel } from './level-class.ts';
import { manganeseIndex } from './manganese-index.ts';
import { isMediaExtract } from './media-extract.ts';
import { isLockable, nutrientName, nutrientOf } from './nutrient.ts';
import { actionsFor } from './verdict-actions.ts';

export type Verdict = 'enough and usable' | 'enough but locked' | 'truly short' | 'too much' | 'cannot tell';

export interface NutrientVerdict {
  readonly nutrient: string;
  readonly verdict: Verdict;
  readonly class?: LevelClass;
  /** Why, in sentences. */
  readonly reasons: readonly Message[];
  /** What to do, and what not to. */
  readonly actions: readonly Message[];
  readonly sources: readonly string[];
  readonly basis: Basis;
}

/** What else of the place bears on a verdict. */
export interface VerdictSetting {
  readonly ph: Ph;
  readonly medium: Medium;
  /** Pot crops that cannot take up iron well above 6.2. */
  readonly ironInefficient?: boolean;
  /** Citation key of the standard to read by. */
  readonly standard?: string;
}

/**
 * Whether a nutrient is enough and usable, enough but locked by the pH, truly short, or too much. A level is read only
 * by the classes of its own extractant, and a nutrient that is locked is never answered with fertilizer.
 *
 * @source classes: nutrient-levels; limits of lock-up: lockups; order of the decision: SORREL
 */
export function nutrientVerdict(level: NutrientLevel, setting: VerdictSetting, recorder?: Recorder): NutrientVerdict {
  const { nutrient } = level;
  const fault = extractantFault(level, setting);
  if (fault !== undefined) return told(level, setting, 'cannot tell', undefined, [fault]);
  const found = classFor(level, setting, recorder);
  if (found === undefined)
    return told(level, setting, 'cannot tell', undefined, [
      { code: 'nutrients.no-classes', parameters: { nutrient: nutrientName(nutrient), extractant: level.extractant } },
    ]);
  const reasons: Message[] = [classSaid(level, found)];
  for (const other of found.others)
    reasons.push({ code: 'nutrients.other-standard', parameters: { standard: other.standard, class: other.class } });
  if (nutrient === 'B' && level.extractant === 'mehlich-3' && found.value >= 2 && found.meaning === 'enough')
    reasons.push({ code: 'nutrients.boron-limit-doubtful' });
  if (nutrient === 'P' && level.extractant === 'mehlich-3' && setting.ph > LIMY_PHOSPHORUS)
    reasons.push({ code: 'nutrients.olsen-better' });
  const locked = lockedBy(nutrient, setting);
  if (found.meaning === 'excess') return told(level, setting, 'too much', found, reasons);
  if (found.unit === 'index' && found.meaning === 'short') {
    // The index holds the pH already, so it tells lack from lock-up by which of the two is out of line.
    const limy = setting.ph > 6.5;
    reasons.push({ code: limy ? 'nutrients.index-limy' : 'nutrients.index-short' });
    return told(level, setting, limy ? 'enough but locked' : 'truly short', found, reasons);
  }
  if (found.meaning === 'short') {
    if (locked !== undefined)
      reasons.push({ code: 'nutrients.short-and-locked', parameters: named(nutrient, setting) });
    return told(level, setting, 'truly short', found, reasons);
  }
  if (found.meaning === 'marginal') reasons.push({ code: 'nutrients.only-just', parameters: named(nutrient, setting) });
  if (locked === undefined || found.unit === 'index') return told(level, setting, 'enough and usable', found, reasons);
  reasons.push(...locked.reasons);
  return told(level, setting, 'enough but locked', found, reasons, locked.sources, locked.basis);
}

/** A verdict for every nutrient of a test, in the order the laboratory printed them. */
export const nutrientVerdicts = (
  levels: readonly NutrientLevel[],
  setting: VerdictSetting,
): readonly NutrientVerdict[] =>
  beside(
    levels.map((level) => nutrientVerdict(level, setting)),
    setting.ph,
  );

function classFor(level: NutrientLevel, setting: VerdictSetting, recorder?: Recorder): LevelClass | undefined {
  const { nutrient, extractant, value } = level;
  if (nutrient === 'Mn' && extractant === 'mehlich-3')
    return classOf(
      nutrient,
      'mehlich-3-index',
      manganeseIndex(value, setting.ph, recorder),
      setting.standard,
      recorder,
    );
  const table: LevelTable = extractant;
  const unit = classOf(nutrient, table, 0, setting.standard)?.unit ?? 'ppm';
  return classOf(nutrient, table, printedLevel(value, extractant, unit), setting.standard, recorder);
}

interface Locked {
  readonly reasons: readonly Message[];
  readonly sources: readonly string[];
  readonly basis: Basis;
}

/** Whether the pH alone keeps a nutrient from the roots: a published limit is passed, or its line is poor. */
function lockedBy(nutrient: string, setting: VerdictSetting): Locked | undefined {
  const { ph, medium } = setting;
  const symbol = nutrientOf(nutrient);
  const pot = medium === 'soilless';
  for (const rule of lockups) {
    if (rule.nutrient !== nutrient || (rule.medium === 'pot') !== pot) continue;
    if (rule.key === 'fe-pot' && setting.ironInefficient === false) continue;
    const past = rule.below === undefined ? ph > (rule.above ?? 14) : ph < rule.below;
    if (!past) continue;
    const limit = { value: rule.below ?? rule.above ?? ph, dimension: 'ph' } as const;
    const code = rule.below === undefined ? 'nutrients.locked-above' : 'nutrients.locked-below';
    const reasons: Message[] = [{ code, parameters: { ...named(nutrient, setting), limit } }];
    if (rule.key === 'p-sour') reasons.push({ code: 'nutrients.phosphorus-doubt' });
    return { reasons, sources: rule.sources, basis: rule.basis };
  }
  if (symbol === undefined || !isLockable(symbol)) return undefined;
  const line = usability(symbol, ph, medium);
  if (line.word !== 'poor') return undefined;
  return {
    reasons: [{ code: 'nutrients.locked-line', parameters: named(nutrient, setting) }],
    sources: line.sources,
    basis: line.basis,
  };
}

const named = (nutrient: string, { ph }: VerdictSetting) => ({
  nutrient: nutrientName(nutrient),
  ph: { value: ph, dimension: 'ph' } as const,
});

const classSaid = ({ nutrient, extractant }: NutrientLevel, found: LevelClass): Message => ({
  code: found.unit === 'index' ? 'nutrients.class-index' : 'nutrients.class',
  parameters: {
    nutrient: nutrientName(nutrient),
    value: Number(found.value.toPrecision(3)),
    unit: found.unit === 'ppm' ? (isMediaExtract(extractant) ? 'mg/L' : 'mg/kg') : found.unit,
    extractant,
    class: found.class,
    standard: found.standard,
  },
});

function told(
  level: NutrientLevel,
  setting: VerdictSetting,
  verdict: Verdict,
  found: LevelClass | undefined,
  reasons: readonly Message[],
  more: readonly string[] = [],
  moreBasis: Basis = 'read',
): NutrientVerdict {
  const sources = [...new Set([...(found?.sources ?? []), ...more])];
  return {
    nutrient: level.nutrient,
    verdict,
    ...(found === undefined ? {} : { class: found }),
    reasons,
    actions: actionsFor(level, verdict, setting),
    sources: sources.length > 0 ? sources : ['SORREL'],
    basis: found === undefined ? 'judgement' : weaker(found.basis, moreBasis),
  };
}

const ORDER: readonly Basis[] = ['read', 'derived', 'judgement', 'memory'];
const weaker = (a: Basis, b: Basis): Basis => (ORDER.indexOf(a) >= ORDER.indexOf(b) ? a : b);
