import type { Place } from '../plan/place.ts';
import type { Metre } from '../units/si.ts';

/** Depths taken when none is given: beds and plots 6 in, lawns 3 in (practice tables: CLEMSON_HGIC, UMASS_SAMPLE), pots 8 in (SORREL). */
const USUAL_DEPTH: Readonly<Record<'ground' | 'lawn' | 'container', Metre>> = {
  ground: 0.1524,
  lawn: 0.0762,
  container: 0.2032,
};

/** Depth that is treated, and sampled, when nobody says. */
export const usualDepth = (container: boolean, situation: Place['situation']): Metre =>
  USUAL_DEPTH[container ? 'container' : situation === 'lawn' ? 'lawn' : 'ground'];
