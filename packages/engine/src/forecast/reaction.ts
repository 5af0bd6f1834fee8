import { grade } from '@sorrel/almanac/assumed-sieves';
import type { Product } from '../materials/material.ts';
import type { IsoDate, KgPerM2, Metre } from '../units/si.ts';
import { magnesiumFactor } from './dissolve.ts';
import { P } from './parameters.ts';
import type { ForecastApplication, Reaction } from './types.ts';

/** A material that gives more acid than this per kg is elemental sulfur: the sulfates stay under 1.6. */
const SULFUR_CURRENCY = -2;

/** Grade of stone assumed when the product names no screens, by its form. */
function limeGrade(product: Product): string {
  if (product.form === 'pellet') return 'pelletized limestone';
  if (product.form === 'powder') return 'fine limestone';
  return 'ordinary limestone';
}

/**
 * How a product reacts in soil: by its own screens when it names them, else by a grade assumed from its form (judgement,
 * `assumed-sieves`). Hydrated and burnt lime and ash are fast; sulfates too; sulfur goes by its grains; compost slowly.
 *
 * @param treatedBefore sulfur was used here before, so its oxidisers need no start
 */
export function reactionOf(product: Product, treatedBefore = false): Reaction {
  if (product.role === 'acidifying') {
    if (product.currency > SULFUR_CURRENCY) return { law: 'fast', days: P.tauSalt };
    const sieves = product.sieves ?? grade(product.form === 'powder' ? 'sulfur dust' : 'sulfur granules');
    return { law: 'oxidising', sieves, speed: 1, waits: !treatedBefore };
  }
  if (product.role === 'liming') {
    if (product.form === 'ash') return { law: 'fast', days: P.tauAsh };
    if (/hydrat|quick|burnt|hydroxide|oxide/.test(product.material)) return { law: 'fast', days: P.tauHydrated };
    return {
      law: 'dissolving',
      sieves: product.sieves ?? grade(limeGrade(product)),
      speed: magnesiumFactor(product.magnesium),
    };
  }
  return { law: 'fast', days: P.tauCompost };
}

/**
 * An application of a product as the forecast wants it. `product.currency` is per kg as sold and before fineness:
 * the grains decide when it works.
 *
 * @param mass as sold, kg per m²
 * @param incorporation depth it is mixed into, m; 0 on the surface
 */
export function applicationOf(
  product: Product,
  mass: KgPerM2,
  date: IsoDate,
  incorporation: Metre,
  treatedBefore = false,
): ForecastApplication {
  return { date, currency: mass * product.currency, reaction: reactionOf(product, treatedBefore), incorporation };
}
