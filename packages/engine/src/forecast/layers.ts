import type { KgPerM2, Metre } from '../units/si.ts';
import type { ForecastInput } from './types.ts';

/** Depth that rain and worms mix a surface dressing into within the first year, m (acidification 6: 2.5-5 cm). */
export const SURFACE_MIX: Metre = 0.05;

export interface LayerPlan {
  readonly top: Metre;
  readonly bottom: Metre;
  readonly mass: KgPerM2;
  /** Part of the sampled depth. */
  readonly reported: boolean;
  /** pH less that of the bed at the start. */
  readonly offset: number;
}

/**
 * One layer when everything is mixed through; two when something is laid on the surface or raked in shallow (mixed into
 * less than 0.8 of the depth): the shallow part and the rest. Further layers below the sampled depth on request.
 */
export function planLayers(
  input: Pick<ForecastInput, 'layer' | 'applications'>,
  below: readonly { readonly depth: Metre; readonly offset?: number }[] = [],
): LayerPlan[] {
  const { depth, mass } = input.layer;
  const density = mass / depth;
  const shallow = input.applications
    .map((application) => Math.max(SURFACE_MIX, application.incorporation))
    .filter((incorporation) => incorporation < 0.8 * depth);
  const first = shallow.length > 0 ? Math.min(...shallow) : depth;
  const plan: LayerPlan[] = [];
  const add = (bottom: Metre, reported: boolean, offset: number) => {
    const top = plan.at(-1)?.bottom ?? 0;
    plan.push({ top, bottom, mass: (bottom - top) * density, reported, offset });
  };
  add(first, true, 0);
  if (first < depth) add(depth, true, 0);
  for (const layer of below) add((plan.at(-1)?.bottom ?? 0) + layer.depth, false, layer.offset ?? 0);
  return plan;
}
