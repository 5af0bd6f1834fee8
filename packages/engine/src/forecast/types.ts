import type { Message } from '../derivation/message.ts';
import type { Sieve } from '../materials/material.ts';
import type { BufferCurve, Layer, Medium, PhEstimate } from '../soil/soil.ts';
import type { Celsius, Fraction, IsoDate, KgPerM2, Metre, MolPerM3, Ph } from '../units/si.ts';
import type { ParameterName, ParameterSet } from './parameter-set.ts';

/** How a material gives its base or acid. */
export type Reaction =
  /** Ground stone or shell: grains shrink as long as the soil is sour. `speed` relative to calcite. */
  | { readonly law: 'dissolving'; readonly sieves: readonly Sieve[]; readonly speed: number }
  /** Elemental sulfur: grains shrink by microbes. `speed` 0.03 for whole pastilles; `waits` when the ground never had sulfur. */
  | { readonly law: 'oxidising'; readonly sieves: readonly Sieve[]; readonly speed: number; readonly waits: boolean }
  /** Hydrated lime, ash, sulfates, compost: e-folding time in days, whatever the pH. */
  | { readonly law: 'fast'; readonly days: number };

export interface ForecastApplication {
  readonly date: IsoDate;
  /** kg CaCO3 equivalent per m² when all has reacted: positive sweetens, negative sours. Without fineness. */
  readonly currency: KgPerM2;
  readonly reaction: Reaction;
  /** Depth it is mixed into, m; 0 lies on the surface. */
  readonly incorporation: Metre;
}

/** Weather of the place. Nothing but a climate's name is needed; the person's own figures replace the typical ones. */
export interface Weather {
  /** Name of a typical climate of the almanac; default `maritime`. */
  readonly climate?: string;
  /** Twelve monthly means of the air, January first. */
  readonly air?: readonly Celsius[];
  /** Twelve monthly means of the soil at 10 cm, when measured or told; then used instead of `air` for the soil. */
  readonly soil?: readonly Celsius[];
  /** Twelve months of rain, m. */
  readonly rain?: readonly Metre[];
  /** Degrees, south negative. */
  readonly latitude?: number;
  /** Water given in a year, m. */
  readonly irrigation?: Metre;
  /** Thick mulch or shade flattens the yearly swing. */
  readonly mulch?: boolean;
  /** Replaces the water balance: moisture relative to field capacity and drainage (m/yr), steady. */
  readonly steady?: { readonly moisture: Fraction; readonly drainage: Metre; readonly temperature?: Celsius };
}

/** What happens every year besides the applications, per m². */
export interface YearlyInputs {
  /** Nitrogen feeds: kg N/m²/yr and charge k (+1 ammonium, 0 urea or organic, −1 nitrate, 0.5 ammonium phosphate). */
  readonly nitrogen?: { readonly amount: KgPerM2; readonly charge: number };
  /** Alkalinity of the irrigation water. */
  readonly waterAlkalinity?: MolPerM3;
  /** Base carried away in crops, kg CaCO3/m²/yr; 0 when residues come back as compost. */
  readonly crop?: KgPerM2;
  /** Base brought by compost and manure every year. */
  readonly compost?: KgPerM2;
  /** Carbon stored as organic matter, kg C/m²/yr. */
  readonly carbonStored?: KgPerM2;
}

export interface ForecastInput {
  readonly start: IsoDate;
  /** 0 to 5 years; default 3. */
  readonly years?: number;
  readonly layer: Layer;
  readonly curve: BufferCurve;
  readonly present: PhEstimate;
  readonly medium: Medium;
  /** A pot or box: follows the air, is mixed through, drains freely. */
  readonly container?: boolean;
  readonly weather?: Weather;
  readonly applications: readonly ForecastApplication[];
  readonly yearly?: YearlyInputs;
  /** Range the plants want. */
  readonly range?: { readonly low: Ph; readonly high: Ph };
  /** Ends that must not be passed; default the range. */
  readonly safe?: { readonly low: Ph; readonly high: Ph };
  /** Error of the retest, pH; default 0.15, one good laboratory. */
  readonly testSd?: number;
  readonly members?: number;
  readonly seed?: number;
  /** What is known better about this place than the almanac's default: centre in SI and, when narrower, the spread. */
  readonly known?: Partial<Record<ParameterName, { readonly centre: number; readonly sd?: number }>>;
  /** Members learned from this bed's retests instead of drawn from the almanac's spreads. */
  readonly parameters?: ParameterSet;
}

export interface Band {
  /** 0.5, 0.8 or 0.95. */
  readonly share: Fraction;
  readonly low: readonly Ph[];
  readonly high: readonly Ph[];
}

/** What pushed the pH, kg CaCO3/m², positive sweetens. */
export type AccountEntry =
  | 'lime'
  | 'ash and fast lime'
  | 'compost'
  | 'sulfur'
  | 'sulfates'
  | 'not mixed in'
  | 'rain and soil'
  | 'fertilizer'
  | 'water'
  | 'crops'
  | 'organic matter'
  | 'leaching'
  | 'aluminium'
  | 'carbonate'
  | 'exchange below';

export interface AccountYear {
  readonly from: IsoDate;
  readonly to: IsoDate;
  readonly entries: Readonly<Record<AccountEntry, KgPerM2>>;
  /** Sum of the entries. */
  readonly change: KgPerM2;
  readonly ph: { readonly start: Ph; readonly end: Ph };
}

export interface Account {
  readonly years: readonly AccountYear[];
  /** Base content of the layer before and after, counted by the soil, not by adding entries. */
  readonly content: { readonly start: KgPerM2; readonly end: KgPerM2 };
  /** Still to react at the end: lime positive, sulfur negative. */
  readonly unreacted: { readonly lime: KgPerM2; readonly sulfur: KgPerM2 };
}

export interface Forecast {
  /** Start and every week after it. */
  readonly dates: readonly IsoDate[];
  readonly median: readonly Ph[];
  readonly bands: readonly Band[];
  /** Bands of what a retest would print: the test's error included. */
  readonly retestBands: readonly Band[];
  /** Chance of being inside the range at each date; empty without a range. */
  readonly inside: readonly Fraction[];
  /** Chance of having been inside at some week up to each date; empty without a range. */
  readonly insideBy: readonly Fraction[];
  /** Chance of ever passing the safe ends after the start; undefined without a range. */
  readonly overshoot?: { readonly above: Fraction; readonly below: Fraction };
  /** First week at which the median is inside the range. */
  readonly insideFrom?: IsoDate;
  readonly retest: { readonly date: IsoDate; readonly why: Message };
  readonly account: Account;
  readonly cautions: readonly Message[];
  readonly members: number;
  readonly seed: number;
  /** Logarithms and exponentials the ensemble evaluated: the yardstick of the bench. */
  readonly evaluated: number;
}
