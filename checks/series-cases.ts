import { grade } from '@sorrel/almanac/assumed-sieves';
import { soillessCapacityByVolume } from '../packages/engine/src/soil/soilless.ts';
import { fromCalciumChloride, lime, MMOL, oneClass, sulfur, type Trial, toCalciumChloride } from './trials.ts';

/** One thing a publication measured. */
export interface Observation {
  readonly id: string;
  readonly what: string;
  /** Years after the start. */
  readonly years: number;
  readonly observed: number;
  /** Years before whose pH is subtracted: a change, or with `perYear` a slope. */
  readonly since?: number;
  readonly perYear?: boolean;
  /** Reads the pH of a layer (0 uppermost) less that of the same bed without lime, instead of the bed's pH. */
  readonly layer?: number;
  readonly against?: 'untreated';
  /** Turns water pH into the publication's method. */
  readonly method?: (ph: number) => number;
  /** Error of the observation, pH; default 0.15 (one laboratory), less for a change of plot means. */
  readonly sd?: number;
}

export interface Series {
  readonly name: string;
  readonly source: string;
  /** `fitted` when the reference set one of the inputs to meet this very observation: no test of a forecast. */
  readonly standing: 'forecast' | 'fitted' | 'in words';
  /** What was assumed because the text read does not say. */
  readonly assumed: string;
  readonly trial: Trial;
  readonly below?: readonly { readonly depth: number; readonly offset?: number }[];
  readonly observations: readonly Observation[];
  /** Physical reason of a miss, shown only when it misses. */
  readonly reason?: string;
}

const ROTHAMSTED = { depth: 0.23, beta: 38, massPerHa: 3.0e6, drainage: 250, climate: 'maritime' } as const;
const acreTon = 0.2242; // short ton/acre in kg/m²

/** Peat substrate: 124 kg/m³, buffer by volume as the soil room has it. */
const peat = (limeGramPerLitre: number): Trial => ({
  ph: 4.5,
  phSd: 0.1,
  soilless: true,
  pot: true,
  temperature: 20,
  own: 0,
  depth: 0.1,
  massPerHa: 12.4e4,
  beta: soillessCapacityByVolume.median / 124 / MMOL,
  applications: limeGramPerLitre === 0 ? [] : [lime(limeGramPerLitre * 0.1, 0.1, grade('fine limestone'))],
});

/** Pots of an alkaline loess soil: 200 kg/m² stands for any mass, the dose is per kg. */
const bintang = (gramPerKg: number): Trial => ({
  ph: 7.03,
  pot: true,
  temperature: 25,
  own: 0,
  depth: 0.15,
  massPerHa: 2e6,
  applications: [sulfur((gramPerKg / 1000) * 200, 0.15, grade('sulfur dust'))],
});

const blueberry = { climate: 'maritime wet winter', depth: 0.1 } as const;

export const series: readonly Series[] = [
  {
    name: 'Grundy silt loam, one and three lime requirements, quarry-run stone, 3 months',
    source: 'IA178',
    standing: 'fitted',
    assumed: 'screens of quarry-run stone; 20 °C and moist; buffer 40 was the best of four tried',
    trial: {
      ph: 5.19,
      beta: 40,
      massPerHa: 2e6,
      temperature: 20,
      applications: [lime(65.7 * MMOL * 200, 0.15, grade('quarry-run limestone'))],
    },
    observations: [{ id: 'DY35', what: 'one requirement', years: 91 / 365, observed: 5.8 }],
    reason: 'fine dust of quarry-run stone is not known; a tenth more under 75 µm moves the 3-month pH by about 0.1',
  },
  {
    name: 'Grundy silt loam, three requirements',
    source: 'IA178',
    standing: 'fitted',
    assumed: 'as above',
    trial: {
      ph: 5.19,
      beta: 40,
      massPerHa: 2e6,
      temperature: 20,
      applications: [lime(197.1 * MMOL * 200, 0.15, grade('quarry-run limestone'))],
    },
    observations: [{ id: 'DY36', what: 'three requirements', years: 91 / 365, observed: 6.6 }],
  },
  {
    name: 'Limed paddocks of southern New South Wales, 0-10 cm',
    source: 'SCO01',
    standing: 'forecast',
    assumed:
      'default soil; 600 mm of rain; 2.5 t/ha of fine lime the year before the first reading; pasture feed by legumes 40 kg N/ha',
    trial: {
      ph: fromCalciumChloride(4.3),
      depth: 0.1,
      climate: 'southern temperate',
      rain: 600,
      nitrogen: { perHa: 40, charge: 0 },
      applications: [lime(0.25, 0.1, grade('fine limestone'))],
    },
    observations: [
      { id: 'DY25', what: 'pH CaCl2 a year after liming', years: 1, observed: 5.1, method: toCalciumChloride },
      {
        id: 'DY25',
        what: 'fall a year afterwards, CaCl2',
        years: 7,
        since: 3,
        perYear: true,
        observed: -0.058,
        method: toCalciumChloride,
        sd: 0.03,
      },
    ],
    reason: 'the survey limed paddocks of many starting pH and doses; start and dose are not in the abstract',
  },
  {
    name: 'Woodland left alone since 1883 (Geescroft)',
    source: 'ERA-GEES',
    standing: 'fitted',
    assumed: 'own acid of 2 kmol/ha/yr was fitted to the end value; buffer, mass and drainage assumed',
    trial: { ...ROTHAMSTED, ph: 7.1, beta: 35, own: 2 },
    observations: [{ id: 'DY30', what: 'pH in 1999', years: 116, observed: 4.4 }],
  },
  {
    name: 'Woodland on chalky ground since 1882 (Broadbalk)',
    source: 'ERA-BKW',
    standing: 'fitted',
    assumed: '30 g/kg carbonate was chosen so that the plateau lasts',
    trial: { ...ROTHAMSTED, ph: 7.9, own: 2, carbonate: 0.03 },
    observations: [{ id: 'DY31', what: 'pH in 1999', years: 117, observed: 7.7 }],
    reason: 'carbonate is lost at the capped rate in every member; a third of the members use up 30 g/kg before 1999',
  },
  {
    name: 'Unfertilised cut grass since 1856 (Park Grass)',
    source: 'ERA-PG',
    standing: 'fitted',
    assumed: 'own acid 0.3 fitted to the end value; buffer, mass and drainage assumed',
    trial: { ...ROTHAMSTED, ph: 5.5, beta: 40, massPerHa: 2.9e6, own: 0.3 },
    observations: [{ id: 'DY32', what: 'pH after 150 years (5.0-5.3)', years: 150, observed: 5.15 }],
  },
  {
    name: 'Repeated surface lime, Western Australia, 10-20 cm',
    source: 'AZ21',
    standing: 'forecast',
    assumed: 'sandy soil of 20 mmol/kg/pH at pH 5 (CaCl2 4.3); 7 t/ha in two dressings ten years apart; 60 mm drains',
    trial: {
      ph: 5,
      beta: 20,
      depth: 0.1,
      massPerHa: 1.45e6,
      drainage: 60,
      climate: 'Mediterranean',
      applications: [
        lime(0.35, 0, grade('ordinary limestone')),
        lime(0.35, 0, grade('ordinary limestone'), '2030-03-01'),
      ],
    },
    below: [{ depth: 0.1 }],
    observations: [
      {
        id: 'DY38',
        what: 'gain of 10-20 cm over no lime, a year',
        years: 17,
        layer: 2,
        against: 'untreated',
        perYear: true,
        since: 0,
        observed: 0.049,
        sd: 0.02,
      },
    ],
    reason:
      'movement is by bicarbonate and soil swapped between layers; roots, tillage and acid of the crop are not told',
  },
  {
    name: 'Surface lime on Icelandic grass, 1 t/ha, 0-5 cm',
    source: 'ICE',
    standing: 'forecast',
    assumed: 'cold maritime grassland; default buffer; 0.7 g/cm³ of volcanic soil',
    trial: { ph: 5.5, depth: 0.05, massPerHa: 0.35e6, beta: 80, climate: 'maritime', applications: [lime(0.1, 0)] },
    observations: [
      {
        id: 'DY43',
        what: 'rise after 4 years over no lime',
        years: 4,
        against: 'untreated',
        layer: 0,
        observed: 0.1,
        sd: 0.1,
      },
    ],
    reason: 'volcanic soil resists far more than its carbon suggests (allophane): the default curve does not know it',
  },
  {
    name: 'Apple orchard, 28 years, no fertilizer',
    source: 'ORCH',
    standing: 'forecast',
    assumed: 'default soil and default own acid; humid temperate inland',
    trial: { ph: 6.33, depth: 0.2, climate: 'humid temperate inland' },
    observations: [{ id: 'DY46', what: 'pH after 28 years', years: 28, observed: 6.17 }],
    reason: 'a plot nobody feeds makes less acid than the default of 0.7 kmol/ha, as the cut grass does (0.2-0.4)',
  },
  {
    name: 'Maize and soybean, Minnesota, 50 kg N/ha a year',
    source: 'BLO81',
    standing: 'forecast',
    assumed: 'start pH 6.3 and buffer 50 (reference note); urea or ammonia; cold continental',
    trial: { ph: 6.3, beta: 50, massPerHa: 2e6, climate: 'cold continental', nitrogen: { perHa: 50, charge: 0 } },
    observations: [{ id: 'DY49', what: 'change in 38 years', years: 38, since: 0, observed: -0.25, sd: 0.15 }],
    reason:
      'crops take up most of the nitrate and prairie subsoil returns base; the leached share of 0.3 is too high for maize',
  },
  ...[0, 1.2, 2.4, 3.6].map(
    (dose, i): Series => ({
      name: `Peat substrate with ${dose} g/L of lime`,
      source: 'COMPEAT',
      standing: 'fitted',
      assumed: 'fine lime, 4 weeks at 20 °C; peat buffer comes from this trial',
      trial: peat(dose),
      observations: [{ id: 'DY52', what: 'pH', years: 4 / 52, observed: [4.5, 5.2, 5.6, 6.1][i] as number }],
    }),
  ),
  {
    name: 'Sulfur 1.0 g/kg in pots of an alkaline loess soil',
    source: 'KAR19',
    standing: 'forecast',
    assumed: 'default buffer, not the 41 found from this pot; powder, 25 °C; read after half a year',
    trial: bintang(1),
    observations: [{ id: 'A053', what: 'pH', years: 0.5, observed: 5.42 }],
  },
  {
    name: 'Sulfur 0.5 g/kg, same soil',
    source: 'KAR17',
    standing: 'forecast',
    assumed: 'as above; pairing of dose and pH inferred',
    trial: bintang(0.5),
    observations: [{ id: 'A054', what: 'pH', years: 0.5, observed: 6.29 }],
  },
  {
    reason:
      'rain had weathered the granules finer than the 150-300 µm assumed, or drip kept a band at root depth wetter and warmer than the typical weather of the place',
    name: 'Sulfur granules 2 x 800 kg/ha, blueberry, drip, 0-10 cm',
    source: 'ALM13',
    standing: 'forecast',
    assumed: 'October planting; first half then, second in spring; default soil; pastilles that broke up',
    trial: {
      ...blueberry,
      ph: 6.6,
      applications: [
        { ...sulfur(0.08, 0.1, grade('sulfur granules')), date: '2020-10-01' },
        { ...sulfur(0.08, 0.1, grade('sulfur granules'), false), date: '2021-04-01' },
      ],
    },
    observations: [
      { id: 'DY51', what: 'pH a month after the first', years: 0.67, observed: 6.4 },
      { id: 'DY51', what: 'pH in December', years: 0.8, observed: 6.1 },
      { id: 'DY51', what: 'pH in July', years: 1.37, observed: 6.0 },
      { id: 'DY51', what: 'lowest later', years: 3, observed: 4.7 },
    ],
  },
  {
    name: 'Micronized sulfur through drip, 125 kg/ha, 0-10 cm',
    source: 'ALM13',
    standing: 'forecast',
    assumed: 'summer; no lag, as the abstract says rapid; the dose spread over the whole bed, which it was not',
    trial: {
      ...blueberry,
      ph: 6.6,
      applications: [{ ...sulfur(0.0125, 0.1, grade('micronized sulfur'), false), date: '2020-06-01' }],
    },
    observations: [
      { id: 'A055', what: 'pH a month later', years: 0.33, observed: 5.8 },
      { id: 'A056', what: 'pH in December', years: 0.79, observed: 6.2 },
      { id: 'A056', what: 'pH in July next year', years: 1.37, observed: 6.1 },
    ],
    reason:
      'drip puts the sulfur into a narrow wetted band, where the dose per m² is several times larger, and the band mixes back afterwards; the model spreads it evenly',
  },
  {
    name: 'Surface lime on old grass, 2 short tons an acre, depth reached',
    source: 'BM56',
    standing: 'in words',
    assumed:
      'fine sandy loam of 32 mmol/kg/pH at pH 5.2; humid temperate inland; pH at 10-15 cm against no lime, "raised" taken as 0.2',
    trial: { ph: 5.2, beta: 32, depth: 0.1, climate: 'humid temperate inland', applications: [lime(2 * acreTon, 0)] },
    below: [{ depth: 0.05 }],
    observations: [
      {
        id: 'DY40',
        what: 'rise at 10-15 cm after 9 years',
        years: 9,
        layer: 2,
        against: 'untreated',
        observed: 0.2,
        sd: 0.15,
      },
    ],
  },
  {
    name: 'Incorporated lime stays put, 2 t/ha in 10 cm, 5 years',
    source: 'CS89',
    standing: 'in words',
    assumed: 'default soil; rise of the 10-15 cm layer, published as none found',
    trial: {
      ph: fromCalciumChloride(4.3),
      depth: 0.1,
      climate: 'southern temperate',
      rain: 600,
      applications: [lime(0.2, 0.1)],
    },
    below: [{ depth: 0.05 }],
    observations: [
      { id: 'DY42', what: 'rise at 10-15 cm', years: 5, layer: 1, against: 'untreated', observed: 0, sd: 0.1 },
    ],
  },
  {
    name: 'Fine lime: change from 6 months to 3 years against the first 6 months',
    source: 'SCO92',
    standing: 'in words',
    assumed: '2.5 t/ha of 10-75 µm; change published only as small: at most a third of the first',
    trial: {
      ph: fromCalciumChloride(4.3),
      depth: 0.1,
      climate: 'southern temperate',
      rain: 600,
      applications: [lime(0.25, 0.1, oneClass(10e-6, 75e-6))],
    },
    observations: [
      { id: 'DY24', what: 'change from 6 to 36 months (small)', years: 3, since: 0.5, observed: 0, sd: 0.2 },
    ],
  },
];
