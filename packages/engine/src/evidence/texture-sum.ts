import type { Fraction } from '../units/si.ts';

/** Sand, silt and clay may miss 100 % by rounding: 1 % either way (as in a published table, PMC_TEX). */
export const addsUp = (sum: Fraction): boolean => Math.abs(sum - 1) <= 0.01 + 1e-9;
