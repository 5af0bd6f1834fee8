/** What an entry may hold. `example` is what the fix shows. */
export interface Limit {
  readonly least: 'more than zero' | 'zero' | 'any';
  readonly most: number;
  readonly mostText: string;
  readonly example: string;
}

const positive = (most: number, mostText: string, example: string): Limit => ({
  least: 'more than zero',
  most,
  mostText,
  example,
});
const notNegative = (most: number, mostText: string, example: string): Limit => ({
  least: 'zero',
  most,
  mostText,
  example,
});

/** Bounds wide enough for any garden and narrow enough to catch a wrong unit; choices of ours. */
export const limits = {
  depth: positive(1.5, '1.5 m (5 ft)', '6 in or 15 cm'),
  jar: notNegative(1, '1 m', '3 cm or 1 1/4 in'),
  area: positive(1e7, '1000 ha', '48 sq ft or 4.5 m2'),
  volume: positive(1e5, '100 000 m3', '12 L or 3 gal'),
  mass: positive(1e6, '1000 t', '40 lb or 20 kg'),
  onHand: notNegative(1e6, '1000 t', '12 lb or 5 kg'),
  share: notNegative(1, '100 %', '4.2 %'),
  cce: positive(2.6, '260 %', '95 %'),
  density: positive(3000, '3 g/cm3', '1.2 g/cm3'),
  massPerArea: notNegative(20, '20 kg/m2', '5 lb/100 ft2 or 250 g/m2'),
  nitrogen: notNegative(0.1, '100 g/m2 (1000 kg/ha)', '10 g/m2 or 2 lb/1000 ft2'),
  feed: notNegative(2, '2 kg/m2', '2 lb or 50 g/m2'),
  harvest: notNegative(30, '30 kg/m2', '20 lb or 4 kg/m2'),
  compost: notNegative(200, '200 kg/m2', '20 kg, 60 L, 2 kg/m2 or 1 cm'),
  alkalinity: notNegative(40, '40 meq/L', '150 mg/L CaCO3'),
  waterDepth: notNegative(10, '10 m', '300 mm or 12 in'),
  rain: notNegative(3, '3 m (120 in) a month', '80 mm or 3 in'),
  charge: notNegative(3, '300 meq/100 g', '4.5 meq/100 g'),
  conductivity: notNegative(20, '200 dS/m', '0.4 dS/m'),
  bufferCapacity: positive(0.05, '50 g/kg', '550 mg/kg'),
  nutrient: notNegative(0.1, '10 % (100 000 mg/kg)', '24 mg/kg'),
  extract: notNegative(50, '50 g/L', '120 mg/L'),
  lead: notNegative(1, '100 %', '85 mg/kg'),
};
