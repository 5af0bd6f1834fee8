import type {
  Fraction,
  IsoDate,
  KgPerM2,
  KgPerM3,
  Metre,
  MolPerKg,
  MolPerM3,
  Ph,
  SiemensPerMetre,
} from '../units/si.ts';

/** How a pH was read. The ratio is soil to liquid. */
export type PhMethod =
  | 'water-1:1'
  | 'water-1:2'
  | 'water-1:2.5'
  | 'water-1:5'
  | 'water-paste'
  | 'cacl2-0.01M'
  | 'kcl-1M'
  /** The report says only "pH": taken as water 1:1 with a wider error. */
  | 'unstated'
  /** Soilless media: 1:2 by volume, saturated media extract, pour-through. Not convertible to soil pH. */
  | 'media-1:2'
  | 'media-extract'
  | 'pour-through';

export type BufferMethod =
  | 'smp'
  | 'sikora'
  | 'sikora-2'
  | 'mehlich'
  | 'modified-mehlich'
  | 'adams-evans'
  | 'moore-sikora'
  | 'woodruff'
  | 'modified-woodruff';

/** Who read it and with what: sets the error, and whether a dose may rest on it. */
export type Instrument = 'laboratory' | 'slurry-meter' | 'colour-kit' | 'strip' | 'probe';

export type TextureClass =
  | 'sand'
  | 'loamy sand'
  | 'sandy loam'
  | 'loam'
  | 'silt loam'
  | 'silt'
  | 'sandy clay loam'
  | 'clay loam'
  | 'silty clay loam'
  | 'sandy clay'
  | 'silty clay'
  | 'clay';

/** Fizz with cold 1 M hydrochloric acid (laboratory or survey words). */
export type AcidFizz = 'none' | 'very slight' | 'slight' | 'strong' | 'violent';
/** Fizz with household vinegar. Silence proves nothing. */
export type VinegarFizz = 'silent' | 'heard only' | 'mild' | 'vigorous';

export interface PrintedRate {
  /** Rate as the laboratory printed it, of the material it means. */
  readonly rate: KgPerM2;
  /** Treated depth the laboratory assumes; printed on the report or in its notes. */
  readonly depth: Metre;
  readonly targetPh: Ph;
  /** Neutralising value the rate assumes, kg CaCO3 per kg; 1 for pure CaCO3 or "100 % CCE". */
  readonly neutralisingValue: Fraction;
  /** Name of the laboratory's method, if printed. */
  readonly method?: string;
}

/** What the laboratory drew the nutrients out with. Figures of two extractants are never compared. */
export type Extractant =
  | 'mehlich-3'
  | 'dtpa'
  | 'bray-p1'
  | 'olsen'
  | 'ammonium-acetate'
  | 'hot-water'
  | 'sulfate-s'
  /** Saturated extract of a potting mix, with water or with DTPA. */
  | 'sme'
  | 'dtpa-sme';

/** One nutrient of a soil test. */
export interface NutrientLevel {
  /** Symbol such as `P` or `Fe`; nitrogen as `NO3-N` or `NH4-N`. */
  readonly nutrient: string;
  readonly extractant: Extractant;
  /** Soil: kg per kg of soil. Saturated extracts (`sme`, `dtpa-sme`): kg per m³ of extract. */
  readonly value: number;
}

/** One soil test or home reading of one place, in SI, with its methods kept beside every number. */
export interface SoilTest {
  readonly id: string;
  readonly date: IsoDate;
  readonly instrument: Instrument;
  readonly laboratory?: string;
  /** State or country whose calibration the laboratory uses, e.g. `Oregon`. */
  readonly region?: string;
  /** Sampling depth. */
  readonly depth: Metre;
  /** Cores in the composite; fewer cores, larger error. */
  readonly cores?: number;
  readonly ph?: { readonly value: Ph; readonly method: PhMethod };
  readonly buffer?: { readonly value: Ph; readonly method: BufferMethod };
  /** Buffer (exchangeable) acidity, H + Al by the buffer, per mass. */
  readonly acidity?: MolPerKg;
  /** Buffer acidity per volume of soil (North Carolina and Brazil report by volume). */
  readonly acidityByVolume?: MolPerM3;
  /** Exchangeable (1 M KCl) aluminium, calcium, magnesium, potassium, sodium, as charge. */
  readonly aluminium?: MolPerKg;
  readonly calcium?: MolPerKg;
  readonly magnesium?: MolPerKg;
  readonly potassium?: MolPerKg;
  readonly sodium?: MolPerKg;
  readonly cec?: MolPerKg;
  /** How the CEC was got: summed cations of a limed or limy soil are inflated. */
  readonly cecBasis?: 'pH 7' | 'summed cations' | 'effective';
  /** Base saturation of `cec`, 0 to 1. */
  readonly baseSaturation?: Fraction;
  readonly organicMatter?: Fraction;
  readonly organicCarbon?: Fraction;
  readonly texture?: TextureClass;
  readonly sand?: Fraction;
  readonly silt?: Fraction;
  readonly clay?: Fraction;
  /** Carbonate as CaCO3 in the soil, mass fraction. */
  readonly carbonate?: Fraction;
  readonly acidFizz?: AcidFizz;
  readonly vinegarFizz?: VinegarFizz;
  /** Lime buffer capacity by a single Ca(OH)2 addition: 30-minute or equilibrium value, kg CaCO3/kg/pH. */
  readonly limeBufferCapacity?: { readonly value: number; readonly kind: '30 min' | 'equilibrium' };
  readonly conductivity?: SiemensPerMetre;
  /** Density of the sieved, scooped sample, for laboratories that report by volume. */
  readonly scoopedDensity?: KgPerM3;
  /** Total lead. */
  readonly lead?: Fraction;
  readonly printedRate?: PrintedRate;
  /** Levels of nutrients, each with its extractant. */
  readonly nutrients?: readonly NutrientLevel[];
}
