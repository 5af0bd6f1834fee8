import type { Message } from '../derivation/message.ts';
import type { SoilTest } from '../evidence/soil-test.ts';
import type { Product } from '../materials/material.ts';
import { defaultProduct } from '../materials/product.ts';
import { refusalFor, type UseContext } from '../materials/refuse.ts';

/** mg of magnesium per mmol of charge. */
const MG_PER_MOL_CHARGE = 0.0121525;
/** Below this the dolomitic kind is the better lime; up to twice it either will do (mg/kg; TRISTATE and UMNGARD, memory; MSUMG read: low below 35). */
const LOW_MAGNESIUM = 50e-6;
const ENOUGH_MAGNESIUM = 100e-6;
/** A lime with this share of magnesium is dolomitic (trade line of about 6 %, SSSABOOK, memory). */
const DOLOMITIC = 0.06;

export interface Choice {
  /** Fit products, best first; without one at hand the almanac's usual product stands in. Empty when all is refused. */
  readonly ranked: readonly Product[];
  readonly refused: readonly Message[];
  /** Why this one, e.g. the magnesium test. */
  readonly why: readonly Message[];
  /** True when nothing suitable is at hand and a usual product was assumed. */
  readonly assumed: boolean;
}

/**
 * Picks the products for a job among those at hand.
 *
 * @param direction raise or lower
 * @param products what the gardener has or can buy, with label figures
 * @param context what the material would be used for; decides refusals
 * @param test latest test, for magnesium
 * @source magnesium rule: materials note section 9 (MSUMG, MSUSEL read; TRISTATE, UMNGARD memory)
 */
export function chooseProducts(
  direction: 'raise' | 'lower',
  products: readonly Product[],
  context: UseContext,
  test: SoilTest | undefined,
): Choice {
  const role = direction === 'raise' ? 'liming' : 'acidifying';
  const refused: Message[] = [];
  const fit: Product[] = [];
  for (const product of products) {
    if (product.role !== role) continue;
    const refusal = refusalFor(product, context);
    if (refusal === undefined) fit.push(product);
    else refused.push(refusal);
  }
  const magnesium = test?.magnesium === undefined ? undefined : test.magnesium * MG_PER_MOL_CHARGE;
  const wantDolomitic = magnesium !== undefined && magnesium <= LOW_MAGNESIUM;
  const wantCalcitic = magnesium !== undefined && magnesium > ENOUGH_MAGNESIUM;
  const assumed = fit.length === 0;
  if (assumed) {
    const usual = usualProduct(direction, wantDolomitic || context.medium === 'soilless');
    const refusal = refusalFor(usual, context);
    if (refusal === undefined) fit.push(usual);
    else refused.push(refusal);
  }
  if (fit.length > 1)
    fit.sort(
      (a, b) => merit(b, direction, wantDolomitic, wantCalcitic) - merit(a, direction, wantDolomitic, wantCalcitic),
    );
  return { ranked: fit, refused, why: reasons(direction, magnesium, wantDolomitic, wantCalcitic, fit[0]), assumed };
}

const SULFUR = defaultProduct('sulfur-powder');
const CALCITIC = defaultProduct('calcitic-limestone');
const DOLOMITIC_STONE = defaultProduct('dolomitic-limestone');

const usualProduct = (direction: 'raise' | 'lower', dolomitic: boolean): Product =>
  direction === 'lower' ? SULFUR : dolomitic ? DOLOMITIC_STONE : CALCITIC;

function merit(product: Product, direction: 'raise' | 'lower', wantDolomitic: boolean, wantCalcitic: boolean): number {
  let merit = product.efficiency;
  const dolomitic = product.magnesium >= DOLOMITIC;
  if ((wantDolomitic && dolomitic) || (wantCalcitic && !dolomitic)) merit += 2;
  if (product.onHand !== undefined && product.onHand > 0) merit += 0.5;
  // Slow, mild materials before fast salts, which burn and leach.
  if (direction === 'lower' && product.currency < -2) merit += 1;
  if (product.form === 'ash') merit -= 0.5;
  return merit;
}

function reasons(
  direction: 'raise' | 'lower',
  magnesium: number | undefined,
  wantDolomitic: boolean,
  wantCalcitic: boolean,
  best: Product | undefined,
): readonly Message[] {
  if (direction === 'lower' || best === undefined) return [];
  if (magnesium === undefined) return [{ code: 'plan.magnesium-unknown' }];
  const parameters = { magnesium: `${Math.round(magnesium * 1e6)} mg/kg` };
  const dolomitic = best.magnesium >= DOLOMITIC;
  if (wantDolomitic)
    return [{ code: dolomitic ? 'plan.magnesium-low' : 'plan.magnesium-low-no-dolomitic', parameters }];
  if (wantCalcitic && !dolomitic) return [{ code: 'plan.magnesium-enough', parameters }];
  return [{ code: 'plan.magnesium-either', parameters }];
}
