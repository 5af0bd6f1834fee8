import { materialOf } from '@sorrel/almanac/materials';
import type { Message } from '../derivation/message.ts';
import type { Product } from './material.ts';

/**
 * What to find out about a product, because the dose rests on a usual figure: the hydrate of a sulfate, fineness,
 * an analysis, moisture. Most important first.
 */
export function questionsAbout(product: Product): Message[] {
  const row = materialOf(product.material);
  const asks: Message[] = [];
  if (row === undefined) return asks;
  const assumed = product.currencyBasis === 'assumed';
  if (assumed && row.key === 'ferrous-sulfate') asks.push({ code: 'materials.ask-iron-hydrate' });
  if (assumed && row.key === 'aluminum-sulfate') asks.push({ code: 'materials.ask-aluminium-hydrate' });
  if (assumed && row.needsAnalysis)
    asks.push({ code: 'materials.ask-analysis', parameters: { product: product.name } });
  if (product.efficiencyBasis === 'assumed' && product.efficiency < 1)
    asks.push({
      code: 'materials.ask-fineness',
      parameters: { product: product.name, efficiency: { value: product.efficiency, dimension: 'share' } },
    });
  if (product.moisture > 0.1 && product.moisture === row.moisture)
    asks.push({
      code: 'materials.ask-moisture',
      parameters: { product: product.name, moisture: { value: product.moisture, dimension: 'share' } },
    });
  return asks;
}
