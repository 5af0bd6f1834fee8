import type { Dimension, UnitSystem } from './dimension.ts';

/** Largest unit first; a value takes the first unit in which it is at least `from`. */
export type Ladder = readonly (readonly [symbol: string, from: number])[];
type Ladders = Readonly<Record<UnitSystem, Ladder>>;

const both = (ladder: Ladder): Ladders => ({ metric: ladder, us: ladder });

export const ladders: Readonly<Record<Exclude<Dimension, 'money'>, Ladders>> = {
  length: {
    metric: [
      ['m', 1],
      ['cm', 1],
      ['mm', 0],
    ],
    us: [
      ['ft', 3],
      ['in', 0],
    ],
  },
  area: {
    metric: [
      ['ha', 1],
      ['m²', 0.1],
      ['cm²', 0],
    ],
    us: [
      ['acre', 0.5],
      ['sq ft', 0],
    ],
  },
  volume: {
    metric: [
      ['m³', 1],
      ['L', 1],
      ['mL', 0],
    ],
    us: [
      ['cu yd', 1],
      ['cu ft', 7],
      ['gal', 1],
      ['qt', 1],
      ['fl oz', 0],
    ],
  },
  mass: {
    metric: [
      ['t', 1],
      ['kg', 1],
      ['g', 0.1],
      ['mg', 0],
    ],
    us: [
      ['short ton', 1],
      ['lb', 1],
      ['oz', 0],
    ],
  },
  massPerArea: {
    metric: [
      ['kg/m²', 10],
      ['g/m²', 0],
    ],
    us: [
      ['lb/100 sq ft', 0.1],
      ['oz/100 sq ft', 0],
    ],
  },
  massPerVolume: {
    metric: [
      ['kg/m³', 0.1],
      ['g/m³', 0],
    ],
    us: [
      ['lb/cu yd', 0.1],
      ['oz/cu yd', 0],
    ],
  },
  massFraction: {
    metric: [
      ['%', 0.1],
      ['mg/kg', 0],
    ],
    us: [
      ['%', 0.1],
      ['ppm', 0],
    ],
  },
  chargePerMass: { metric: [['cmolc/kg', 0]], us: [['meq/100 g', 0]] },
  chargePerSoilVolume: both([['meq/100 cm³', 0]]),
  alkalinity: both([['mg/L CaCO3', 0]]),
  temperature: { metric: [['°C', Number.NEGATIVE_INFINITY]], us: [['°F', Number.NEGATIVE_INFINITY]] },
  conductivity: both([['dS/m', 0]]),
  waterDepth: { metric: [['mm', 0]], us: [['in', 0]] },
};
export const forms: Readonly<Record<'field' | 'density', Partial<Record<Dimension, Ladders>>>> = {
  field: { massPerArea: { metric: [['t/ha', 0]], us: [['short ton/acre', 0]] } },
  density: { massPerVolume: { metric: [['g/cm³', 0]], us: [['lb/cu ft', 0]] } },
};

/** Nothing has no size: the unit a zero is told in, where the smallest would be odd. */
export const zeros: Partial<Record<Dimension, Readonly<Record<UnitSystem, string>>>> = {
  length: { metric: 'cm', us: 'in' },
  area: { metric: 'm²', us: 'sq ft' },
  volume: { metric: 'L', us: 'gal' },
  mass: { metric: 'kg', us: 'lb' },
  massPerArea: { metric: 'g/m²', us: 'lb/100 sq ft' },
  massPerVolume: { metric: 'kg/m³', us: 'lb/cu yd' },
  massFraction: { metric: '%', us: '%' },
};
