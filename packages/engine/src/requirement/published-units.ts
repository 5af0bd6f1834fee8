import { conversion } from '@sorrel/almanac/conversions';
import type { KgPerM2, KgPerM3, Metre } from '../units/si.ts';

/**
 * Sizes of the units lime tables are printed in, kg/m² each unless the name says otherwise.
 * They serve between the first and the last line of a published formula; everything else is SI. [EXACT]
 */
export const TONNE_PER_HECTARE: KgPerM2 = conversion('t/ha', 'g/m2') / 1000;
export const SHORT_TON_PER_ACRE: KgPerM2 = conversion('short ton/acre', 't/ha') * TONNE_PER_HECTARE;
export const LB_PER_ACRE: KgPerM2 = conversion('lb/acre', 'g/m2') / 1000;
export const LB_PER_100_SQ_FT: KgPerM2 = conversion('lb/100ft2', 'g/m2') / 1000;
export const LB_PER_1000_SQ_FT: KgPerM2 = conversion('lb/1000ft2', 'g/m2') / 1000;
export const INCH: Metre = conversion('in', 'cm') / 100;

/** CaCO3 that 1 mol of charge neutralises, kg/mol_c: 100.09/2 g. [derived] */
export const CACO3_PER_MOL: number = conversion('cmolc/kg', 'g CaCO3/kg') / 10;

/**
 * Soil density behind the American "furrow slice": 2,000,000 lb to the acre, 20/3 in deep, 1323 kg/m³.
 * Taken where a publication states a depth and no soil mass. [derived]
 */
export const FURROW_SLICE_DENSITY: KgPerM3 = (2e6 * LB_PER_ACRE) / ((20 / 3) * INCH);
