import { leadLevel } from '@sorrel/almanac/lead-levels';
import { type MaterialRow, materialOf } from '@sorrel/almanac/materials';
import type { Message } from '../derivation/message.ts';
import type { Medium } from '../soil/soil.ts';
import type { Fraction, Ph } from '../units/si.ts';
import type { Product } from './material.ts';

/** What a material would be used for. Whatever is unknown is left out. */
export interface UseContext {
  readonly situation: 'open ground' | 'around plants' | 'lawn' | 'container';
  readonly presentPh?: Ph;
  readonly targetPh?: Ph;
  /** Safe upper end of the range. */
  readonly highPh?: Ph;
  /** Free carbonate in the soil, kg/kg; left out when nobody looked. */
  readonly carbonate?: Fraction;
  /** Total lead, kg/kg. */
  readonly lead?: Fraction;
  /** Plants already grow there. */
  readonly planted?: boolean;
  readonly plantsReaction?: 'acid-loving' | 'neutral' | 'lime-loving' | 'lime-tolerant';
  readonly plants?: readonly { readonly key: string; readonly name: string }[];
  readonly medium?: Medium;
  /** Grown under organic certification: what a certifier does not clearly allow is not used. */
  readonly certifiedOrganic?: boolean;
  /** Used by people at home, not by trained growers. */
  readonly home?: boolean;
}

/** No lime or ash from here (materials note, section 8). */
const NEUTRAL = 7;
/** Above this a carbonate test must come first (acidification note, section 2). */
const CARBONATE_TEST_ABOVE = 7.2;
/** More free lime than this is not acidified in the ground (acidification note, section 4, judgement). */
const TOO_MUCH_CARBONATE = 0.003;

/**
 * Why a material must not be used here to change the pH, with what to do instead; `undefined` when nothing speaks against it.
 * Answers about the material come before answers about the place.
 *
 * @param material a product, or a row of the almanac (then nothing is known of its label)
 * @source OSUHYD, OSUASH, NCARCH91, WISULF, OSUPINE, SCG24, EGGAL, MOMEDIA, EPA_2024, FLINT_LEAD and the notes named above
 */
export function refusalFor(material: Product | MaterialRow, context: UseContext): Message | undefined {
  const product = 'efficiencyBasis' in material ? material : undefined;
  const row = 'key' in material ? material : materialOf(material.material);
  const name = material.name;
  if (material.refused !== undefined && allowedAfterAll(material.refused, context) === false)
    return { code: material.refused as Message['code'], parameters: { product: name } };
  if (row?.needsAnalysis === true && product?.currencyBasis !== 'label')
    return { code: 'materials.refuse-needs-analysis', parameters: { product: name } };
  if (context.certifiedOrganic === true && row !== undefined && row.organic !== 'yes')
    return {
      code: row.organic === 'no' ? 'materials.refuse-not-organic' : 'materials.refuse-ask-certifier',
      parameters: { product: name },
    };
  const currency = product?.currency ?? row?.nvTypical ?? 0;
  if (row === undefined || currency === 0 || row.role === 'neutral')
    return { code: 'materials.refuse-no-effect', parameters: { product: name } };
  return currency > 0 ? refuseRaising(row, name, context) : refuseLowering(row, name, context);
}

/** Trained growers may use strong acids on water; nothing else that the almanac refuses is ever allowed. */
const allowedAfterAll = (code: string, context: UseContext): boolean =>
  code === 'materials.refuse-strong-acid' && context.home === false;

function refuseRaising(row: MaterialRow, name: string, context: UseContext): Message | undefined {
  const { presentPh, targetPh } = context;
  if (presentPh !== undefined && presentPh >= NEUTRAL) return withPh('materials.refuse-lime-neutral', name, context);
  if (presentPh !== undefined && presentPh >= (targetPh ?? context.highPh ?? NEUTRAL))
    return withPh('materials.refuse-lime-not-needed', name, context);
  if (row.form === 'ash') {
    if (context.plantsReaction === 'acid-loving' || grows(context, /blueberr|azalea|rhododendron/i))
      return { code: 'materials.refuse-ash-acid-plants' };
    if (grows(context, /(?<!sweet[ -]?)potato/i)) return { code: 'materials.refuse-ash-potato' };
  }
  return undefined;
}

function refuseLowering(row: MaterialRow, name: string, context: UseContext): Message | undefined {
  const { presentPh, targetPh, carbonate, lead } = context;
  if (lead !== undefined && lead >= leadLevel('talk')) return { code: 'materials.refuse-lead' };
  if (row.limitGroup === 'aluminium sulfate' && !grows(context, /hydrangea/i))
    return { code: 'materials.refuse-aluminium' };
  if (carbonate !== undefined && carbonate > TOO_MUCH_CARBONATE) return { code: 'materials.refuse-limy-soil' };
  if (
    presentPh !== undefined &&
    presentPh > CARBONATE_TEST_ABOVE &&
    carbonate === undefined &&
    context.medium !== 'soilless'
  )
    return withPh('materials.refuse-test-lime-first', name, context);
  if (presentPh !== undefined && targetPh !== undefined && presentPh <= targetPh)
    return withPh('materials.refuse-acid-not-needed', name, context);
  if (context.situation === 'container') {
    if (row.limitGroup === 'iron sulfate' && context.planted === true)
      return { code: 'materials.refuse-planted-pot', parameters: { product: name } };
    if (row.limitGroup === 'sulfur' && row.form !== 'powder') return { code: 'materials.refuse-granules-pot' };
  }
  return undefined;
}

const grows = (context: UseContext, pattern: RegExp): boolean =>
  context.plants?.some(({ key, name }) => pattern.test(key) || pattern.test(name)) ?? false;

const withPh = (code: Message['code'], product: string, { presentPh, targetPh, highPh }: UseContext): Message => ({
  code,
  parameters: {
    product,
    ph: { value: presentPh ?? Number.NaN, dimension: 'ph' },
    target: { value: targetPh ?? highPh ?? NEUTRAL, dimension: 'ph' },
  },
});
