import type { Adapter } from '../adapter.ts';
import { acids } from './materials/acids.ts';
import { fineness } from './materials/fineness.ts';
import { nitrogen } from './materials/nitrogen.ts';
import { rates } from './materials/rates.ts';
import { water } from './materials/water.ts';

/** Quality of liming materials, acidifiers, fertilizer acidity, water (`engine/materials`). */
export const materials: readonly Adapter[] = [...fineness, ...rates, ...acids, ...nitrogen, ...water];
