/**
 * SI aliases. Inside the engine every number is in the unit its type names; other units exist only in
 * `units/` (parsing and printing) and inside a published formula, between its first and last line.
 */
export type Kilogram = number;
export type Metre = number;
export type SquareMetre = number;
export type CubicMetre = number;
/** kg per m² of bed. As a pH currency: kg CaCO3 equivalent per m², positive sweetens, negative sours. */
export type KgPerM2 = number;
export type KgPerM3 = number;
/** Mass fraction, kg per kg, 0 to 1. */
export type Fraction = number;
/** Amount of charge per mass of soil, mol_c per kg. 1 cmol_c/kg = 1 meq/100 g = 0.01 mol_c/kg. */
export type MolPerKg = number;
/** Amount of charge per volume of soil or water, mol_c per m³. 1 meq/L = 1 mol_c/m³; 1 meq/100 cm³ = 10 mol_c/m³. */
export type MolPerM3 = number;
/** pH, on the water scale (1:1 to 1:2.5) unless the name says otherwise. */
export type Ph = number;
/** Buffer capacity, kg CaCO3 per kg dry soil per pH unit. 1 g/kg/pH = 0.001. */
export type BufferCapacity = number;
/** Degrees Celsius; the one non-SI unit, kept because every source and thermometer uses it. */
export type Celsius = number;
/** Electrical conductivity, S/m. 1 dS/m = 1 mS/cm = 0.1 S/m. */
export type SiemensPerMetre = number;
/** ISO 8601 calendar date, `YYYY-MM-DD`. */
export type IsoDate = string;
