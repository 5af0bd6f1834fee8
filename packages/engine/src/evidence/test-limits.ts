import type { SoilTest } from './soil-test.ts';

/** Bounds of one figure of a test, in SI; outside them it is a slip of the pen or of the unit. Our judgement. */
export interface Limits {
  readonly field: string;
  readonly value: number | undefined;
  readonly low: number;
  readonly high: number;
  readonly what: string;
  readonly fix: string;
}

/** mol_c/kg; 150 cmol_c/kg is peat. */
const CHARGE_HIGH = 1.5;

/** Every bounded figure of a test, given or not. */
export function limitsOf(test: SoilTest): Limits[] {
  const percent = 'Give it in percent, or as a share from 0 to 1.';
  const charge = 'Check the unit: most reports print meq/100 g or cmol/kg, some print mg/kg.';
  const share = (field: string, value: number | undefined, what: string, high = 1): Limits => ({
    field,
    value,
    low: 0,
    high,
    what,
    fix: percent,
  });
  const ion = (field: string, value: number | undefined, what: string): Limits => ({
    field,
    value,
    low: 0,
    high: CHARGE_HIGH,
    what,
    fix: charge,
  });
  return [
    {
      field: 'depth',
      value: test.depth,
      low: 0.01,
      high: 1,
      what: 'The sampling depth in metres',
      fix: 'Give how deep the cores went, for example 15 cm or 6 in.',
    },
    {
      field: 'cores',
      value: test.cores,
      low: 1,
      high: 200,
      what: 'The number of cores',
      fix: 'Give how many cores went into the sample, usually about 12.',
    },
    ion('cec', test.cec, 'The cation exchange capacity in mol/kg'),
    ion('acidity', test.acidity, 'The buffer acidity in mol/kg'),
    ion('aluminium', test.aluminium, 'Aluminium in mol/kg'),
    ion('calcium', test.calcium, 'Calcium in mol/kg'),
    ion('magnesium', test.magnesium, 'Magnesium in mol/kg'),
    ion('potassium', test.potassium, 'Potassium in mol/kg'),
    ion('sodium', test.sodium, 'Sodium in mol/kg'),
    {
      field: 'acidityByVolume',
      value: test.acidityByVolume,
      low: 0,
      high: 500,
      what: 'The acidity in mol/m³ of soil',
      fix: charge,
    },
    share('baseSaturation', test.baseSaturation, 'Base saturation'),
    share('organicMatter', test.organicMatter, 'Organic matter'),
    share('organicCarbon', test.organicCarbon, 'Organic carbon', 0.6),
    share('carbonate', test.carbonate, 'Carbonate in the soil', 0.95),
    share('sand', test.sand, 'Sand'),
    share('silt', test.silt, 'Silt'),
    share('clay', test.clay, 'Clay'),
    share('lead', test.lead, 'Lead', 0.1),
    {
      field: 'conductivity',
      value: test.conductivity,
      low: 0,
      high: 5,
      what: 'Conductivity in S/m',
      fix: 'Check the unit: reports print dS/m, mS/cm or µS/cm.',
    },
    {
      field: 'scoopedDensity',
      value: test.scoopedDensity,
      low: 100,
      high: 2000,
      what: 'The density of the scooped sample in kg/m³',
      fix: 'Reports print W/V in g/cm³, usually between 0.5 and 1.6.',
    },
    {
      field: 'limeBufferCapacity.value',
      value: test.limeBufferCapacity?.value,
      low: 0.00005,
      high: 0.03,
      what: 'The lime buffer capacity in kg CaCO3/kg/pH',
      fix: 'Georgia prints mg CaCO3/kg/pH, usually between 100 and 1500.',
    },
  ];
}
