import type { Passing } from './gradation.ts';
import { meshOpening } from './screen.ts';

const [MESH_4, MESH_8, MESH_60] = [meshOpening(4) ?? 0, meshOpening(8) ?? 0, meshOpening(60) ?? 0];

/**
 * Iowa total fineness efficiency on cumulative shares: `TFE = 0.1 P4 + 0.3 P8 + 0.6 P60`.
 * The only published system that multiplies what passes each screen.
 *
 * @source WILIME
 */
export const iowaEfficiency = (passing: Passing): number =>
  0.1 * passing(MESH_4) + 0.3 * passing(MESH_8) + 0.6 * passing(MESH_60);
