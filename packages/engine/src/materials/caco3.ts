/** Molar mass of CaCO3, kg/mol, and the mass that neutralises one mole of acid. Source: CALC (IUPAC abridged masses). */
export const CACO3_MOLAR_MASS = 0.100086;
export const CACO3_PER_CHARGE = CACO3_MOLAR_MASS / 2;
