import type { Passing } from './gradation.ts';
import { meshOpening } from './screen.ts';

const [MESH_10, MESH_60] = [meshOpening(10) ?? 0, meshOpening(60) ?? 0];

/**
 * Alabama efficiency: `FE = 0.5 A + B`, A the share between 10 and 60 mesh, B finer than 60 mesh.
 *
 * @source ALRNV
 */
export const alabamaEfficiency = (passing: Passing): number => {
  const fine = passing(MESH_60);
  return 0.5 * (passing(MESH_10) - fine) + fine;
};
