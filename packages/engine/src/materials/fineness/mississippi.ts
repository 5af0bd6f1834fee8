import type { Passing } from './gradation.ts';
import { meshOpening } from './screen.ts';

const [MESH_10, MESH_50] = [meshOpening(10) ?? 0, meshOpening(50) ?? 0];

/**
 * Mississippi and Kentucky efficiency in closed form: `FE = (P10 + P50)/2`.
 *
 * @source MSRNV (read), KYAGR106 (memory)
 */
export const mississippiEfficiency = (passing: Passing): number => (passing(MESH_10) + passing(MESH_50)) / 2;
