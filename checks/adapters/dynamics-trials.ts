import { grade } from '@sorrel/almanac/assumed-sieves';
import {
  centralSet,
  FLUXES,
  type ForecastApplication,
  P,
  type ScenarioOptions,
  type Simulation,
  simulate,
} from '../../packages/engine/src/forecast/index.ts';
import type { Adapter, CheckCase } from '../adapter.ts';
import {
  fromCalciumChloride,
  inputOf,
  lime,
  MMOL,
  oneClass,
  sulfur,
  TONNE_HA,
  type Trial,
  toCalciumChloride,
} from '../trials.ts';

/** Single runs with every parameter at its default: what the model says of a published trial from its inputs alone. */
const YEAR = 365.2425;
const ACRE_TON = 0.2242;
/** What the abstracts say of a site besides the inputs of a case. */
const SITES: Readonly<Record<string, Trial>> = {
  // BOL77, sandy-clay loam of the long-term liming plots: the inputs the reference assumes for it.
  Rothamsted: { ph: 5, beta: 38, depth: 0.23, massPerHa: 3e6, own: 4.5, drainage: 250 },
  // SCO01, high-rainfall wheat belt: pasture of clover, about 600 mm.
  Harden: {
    ph: fromCalciumChloride(4.3),
    depth: 0.1,
    climate: 'southern temperate',
    rain: 600,
    nitrogen: { perHa: 40, charge: 0 },
  },
};
/** "Acid" subsoil and topsoil of southern New South Wales in CaCl2. */
const ACID = fromCalciumChloride(4.3);
const NEW_SOUTH_WALES = { ph: ACID, depth: 0.1, climate: 'southern temperate', rain: 600 } as const;

const number = (check: CheckCase, key: string): number | undefined => {
  const value = check.inputs[key];
  return typeof value === 'number' ? value : undefined;
};
const list = (check: CheckCase, key: string): number[] => {
  const value = check.inputs[key];
  return Array.isArray(value) ? value.map(Number) : [];
};
const has = (check: CheckCase, ...keys: string[]): boolean => keys.every((key) => key in check.inputs);
const wants = (check: CheckCase, ...keys: string[]): boolean => keys.every((key) => key in check.expected);

interface Outcome {
  readonly run: Simulation;
  at(years: number): number;
  layerAt(layer: number, years: number): number;
}

function course(trial: Trial, years: number, options: ScenarioOptions = {}): Outcome {
  const input = inputOf(trial);
  const stepDays = years > 15 ? 28 : 7;
  const steps = Math.ceil((years * YEAR) / stepDays) + 1;
  const run = simulate(input, centralSet(input), { stepDays, steps, ...options });
  const step = (when: number) => Math.min(steps, Math.round((when * YEAR) / stepDays));
  return {
    run,
    at: (when) => run.ph[step(when)] ?? Number.NaN,
    layerAt: (layer, when) => run.layerPh[step(when) * run.scenario.layers + layer] ?? Number.NaN,
  };
}

/** Inputs that several cases share, in the units of the cases. */
function soilOf(check: CheckCase): Partial<Trial> {
  const beta = number(check, 'beta_mmol');
  const mass = number(check, 'mass_kg_ha');
  const depth = number(check, 'depth_cm');
  const own = number(check, 'A0');
  const drainage = number(check, 'drain_mm');
  return {
    ...(beta === undefined ? {} : { beta }),
    ...(mass === undefined ? {} : { massPerHa: mass }),
    ...(depth === undefined ? {} : { depth: depth / 100 }),
    ...(own === undefined ? {} : { own }),
    ...(drainage === undefined ? {} : { drainage }),
  };
}

const dissolvesInField: Adapter = {
  name: 'share of lime dissolved in the field',
  accepts: (check) => has(check, 'dose_t_ha', 'depth_cm', 'years', 'rain_mm') && wants(check, 'fraction_dissolved_min'),
  compute(check) {
    const years = number(check, 'years') ?? 0;
    const coarsest = Number(check.expected.size_um_below ?? 1000) * 1e-6;
    const depth = (number(check, 'depth_cm') ?? 10) / 100;
    const { run } = course(
      {
        ...NEW_SOUTH_WALES,
        depth,
        rain: (number(check, 'rain_mm') ?? 0) / years,
        applications: [lime((number(check, 'dose_t_ha') ?? 0) * TONNE_HA, depth, oneClass(10e-6, coarsest))],
      },
      years,
    );
    return { fraction_dissolved_min: 1 - (run.left.at(-1) ?? Number.NaN), size_um_below: coarsest * 1e6 };
  },
};

const fractionsConverge: Adapter = {
  name: 'sieve fractions of lime converge',
  accepts: (check) => has(check, 'dose_t_ha', 'years', 'classes_um') && wants(check, 'coarsest_below_others'),
  compute(check) {
    const classes = (check.inputs.classes_um as number[][]).map(([from = 0, to = 0]) => ({ from, to }));
    const years = number(check, 'years') ?? 0;
    const dose = (number(check, 'dose_t_ha') ?? 0) * TONNE_HA;
    const ends = [...classes]
      .sort((a, b) => b.to - a.to)
      .map(({ from, to }) =>
        course({ ...NEW_SOUTH_WALES, applications: [lime(dose, 0.1, oneClass(from * 1e-6, to * 1e-6))] }, years).at(
          years,
        ),
      );
    const [coarsest = 0, ...finer] = ends;
    return {
      pH_spread_of_five_finest_max: Math.max(...finer) - Math.min(...finer),
      coarsest_below_others: coarsest < Math.min(...finer),
    };
  },
};

const firstMonths: Adapter = {
  name: 'later change against that of the first months',
  accepts: (check) => has(check, 'dose_t_ha', 'size_um') && wants(check, 'abs_dpH_6_36mo_over_dpH_0_6mo_max'),
  compute(check) {
    const [from = 0, to = 0] = list(check, 'size_um');
    const dose = (number(check, 'dose_t_ha') ?? 0) * TONNE_HA;
    const { at } = course({ ...NEW_SOUTH_WALES, applications: [lime(dose, 0.1, oneClass(from * 1e-6, to * 1e-6))] }, 3);
    return { abs_dpH_6_36mo_over_dpH_0_6mo_max: Math.abs(at(3) - at(0.5)) / (at(0.5) - at(0)) };
  },
};

const limedPaddocks: Adapter = {
  name: 'limed paddocks of a region',
  accepts: (check) => has(check, 'site', 'depth_cm') && wants(check, 'dpH_per_year', 'dpH_per_t_lime'),
  compute(check) {
    const site = SITES[String(check.inputs.site)];
    if (site === undefined) throw new Error(`nothing is known of the site ${String(check.inputs.site)}`);
    const depth = (number(check, 'depth_cm') ?? 10) / 100;
    const with_ = (tonnes: number) =>
      course({ ...site, depth, applications: [lime(tonnes * TONNE_HA, depth, grade('fine limestone'))] }, 8);
    const limed = with_(2.5);
    return {
      dpH_per_year: (toCalciumChloride(limed.at(7)) - toCalciumChloride(limed.at(3))) / 4,
      dpH_per_t_lime: (toCalciumChloride(limed.at(1)) - toCalciumChloride(with_(0).at(1))) / 2.5,
      pHCa_1yr: toCalciumChloride(limed.at(1)),
    };
  },
};

const baseLoss: Adapter = {
  name: 'base lost a year from limed plots',
  accepts: (check) => has(check, 'lime_t_ha', 'years', 'pH0', 'A0', 'drain_mm') && wants(check, 'max'),
  compute(check) {
    const years = number(check, 'years') ?? 0;
    const trial: Trial = { depth: 0.23, ...soilOf(check), ph: number(check, 'pH0') ?? Number.NaN };
    const losses = list(check, 'lime_t_ha').map((tonnes) => {
      const { run } = course({ ...trial, applications: [lime(tonnes * TONNE_HA, trial.depth ?? 0.23)] }, years);
      const sum = (name: (typeof FLUXES)[number]) =>
        run.ledger.reduce((total, value, i) => (i % FLUXES.length === FLUXES.indexOf(name) ? total + value : total), 0);
      return (-1e4 * (sum('own') + sum('leaching') + sum('aluminium'))) / years;
    });
    return { loss_kg_CaCO3_ha_yr_min: Math.min(...losses), max: Math.max(...losses) };
  },
};

const peakYears: Adapter = {
  name: 'year of the highest pH after liming',
  accepts: (check) => has(check, 'lime_t_ha', 'site') && wants(check, 'peak_year_5'),
  compute(check) {
    const site = SITES[String(check.inputs.site)];
    if (site === undefined) throw new Error(`nothing is known of the site ${String(check.inputs.site)}`);
    return Object.fromEntries(
      list(check, 'lime_t_ha').map((tonnes) => {
        const { run } = course({ ...site, applications: [lime(tonnes * TONNE_HA, site.depth ?? 0.15)] }, 12);
        const peak = run.ph.reduce((best, ph, i) => (ph > (run.ph[best] ?? 0) ? i : best), 0);
        return [`peak_year_${tonnes}`, (peak * run.scenario.stepDays) / YEAR];
      }),
    );
  },
};

const longDrift: Adapter = {
  name: 'pH of untreated ground after many years',
  accepts: (check) =>
    has(check, 'year0') && has(check, 'A0') && (wants(check, 'pH_1999') || wants(check, 'pH_end_min', 'pH_end_max')),
  compute(check) {
    const carbonate = (number(check, 'CaCO3_g_kg') ?? 0) / 1000;
    const end = Object.keys(check.expected).find((key) => /^pH_\d{4}$/.test(key));
    const years = number(check, 'years') ?? Number(end?.slice(3)) - (number(check, 'year0') ?? 0);
    const ph = number(check, 'pH0') ?? P.pHCal.centre;
    const value = course({ drainage: 250, depth: 0.23, ...soilOf(check), ph, carbonate }, years).at(years);
    return Object.fromEntries(Object.keys(check.expected).map((key) => [key, value]));
  },
};

const lightDrift: Adapter = {
  name: 'pH after years without lime',
  accepts: (check) =>
    has(check, 'years') &&
    !has(check, 'year0') &&
    ((has(check, 'pH0') && wants(check, 'pH_end')) || (has(check, 'N_kg_ha_yr_mean') && wants(check, 'dpH'))),
  compute(check) {
    const years = number(check, 'years') ?? 0;
    const ph = number(check, 'pH0') ?? 6.3;
    const perHa = number(check, 'N_kg_ha_yr_mean');
    const value = course(
      { ph, ...soilOf(check), ...(perHa === undefined ? {} : { nitrogen: { perHa, charge: 0 } }) },
      years,
    );
    return { pH_end: value.at(years), dpH: value.at(years) - value.at(0) };
  },
};

const limeIncubation: Adapter = {
  name: 'pH some days after lime',
  accepts: (check) => has(check, 'pH0', 'dose_mmol_kg', 'days', 'beta_mmol') && wants(check, 'pH'),
  compute(check) {
    const years = (number(check, 'days') ?? 0) / YEAR;
    const name = `${String(check.inputs.lime ?? 'quarry-run')} limestone`;
    const dose = (number(check, 'dose_mmol_kg') ?? 0) * MMOL * 200;
    const trial = { ...soilOf(check), ph: number(check, 'pH0') ?? 0, massPerHa: 2e6, temperature: 20 };
    return { pH: course({ ...trial, applications: [lime(dose, 0.15, grade(name))] }, years + 0.05).at(years) };
  },
};

const untreated = (applications: readonly ForecastApplication[]) => applications.map((a) => ({ ...a, currency: 0 }));

const nextLayer: Adapter = {
  name: 'surface lime and the layers it reaches',
  accepts: (check) =>
    (has(check, 'layer_cm', 'dose_t_ha_total', 'years') && wants(check, 'dpH_per_year')) ||
    (has(check, 'layer_cm', 'dose_t_ha', 'years') && wants(check, 'dpH')),
  compute(check) {
    const [top = 0, bottom = 10] = list(check, 'layer_cm').map((cm) => cm / 100);
    const both = list(check, 'years');
    const years = number(check, 'years') ?? both.reduce((sum, year) => sum + year, 0) / Math.max(1, both.length);
    const doses = has(check, 'dose_t_ha') ? [number(check, 'dose_t_ha') ?? 0] : list(check, 'dose_t_ha_total');
    const dose = (doses.reduce((sum, each) => sum + each, 0) / doses.length) * TONNE_HA;
    const depth = top === 0 ? bottom : top;
    const applications = [lime(dose, 0)];
    const trial: Trial = { ph: 5, depth, climate: 'southern temperate', ...soilOf(check), applications };
    const options = top === 0 ? {} : { below: [{ depth: bottom - top }] };
    const layer = (outcome: Outcome) =>
      top === 0 ? outcome.at(years) : outcome.layerAt(outcome.run.scenario.layers - 1, years);
    const rise =
      layer(course(trial, years, options)) -
      layer(course({ ...trial, applications: untreated(applications) }, years, options));
    return { dpH: rise, dpH_per_year: rise / years };
  },
};

/** Thin layers below the treated one; a layer counts as reached when lime lifts it by 0.2, a difference a trial would see. */
const SEEN = 0.2;
function reach(dose: number, incorporation: number, years: number): number {
  const first = incorporation === 0 ? 0.05 : incorporation;
  const thin = 0.02;
  const below = Array.from({ length: 15 }, () => ({ depth: thin }));
  const applications = [lime(dose, incorporation)];
  const trial: Trial = { ph: 5.2, depth: first, climate: 'humid temperate inland', applications };
  const limed = course(trial, years, { below });
  const plain = course({ ...trial, applications: untreated(applications) }, years, { below });
  let bottom = first;
  for (let layer = 1; layer <= below.length; layer++) {
    if (limed.layerAt(layer, years) - plain.layerAt(layer, years) < SEEN) break;
    bottom += thin;
  }
  return bottom;
}

const depthReached: Adapter = {
  name: 'depth that lime reaches',
  accepts: (check) =>
    has(check, 'years') &&
    ((has(check, 'dose_short_ton_acre') && wants(check, 'depth_in')) ||
      (has(check, 'dose_t_ha', 'incorporated_cm') && wants(check, 'cm_below_max'))),
  compute(check) {
    const years = number(check, 'years') ?? 0;
    const tons = number(check, 'dose_short_ton_acre');
    if (tons !== undefined) return { depth_in: reach(tons * ACRE_TON, 0, years) / 0.0254 };
    const depth = (number(check, 'incorporated_cm') ?? 10) / 100;
    return { cm_below_max: 100 * (reach((number(check, 'dose_t_ha') ?? 0) * TONNE_HA, depth, years) - depth) };
  },
};

const sulfurInField: Adapter = {
  name: 'pH some days after fine sulfur',
  accepts: (check) => has(check, 'S_kg_per_ha', 'pH0', 'days', 'layer_cm') && wants(check, 'pH'),
  compute(check) {
    const depth = (number(check, 'layer_cm') ?? 10) / 100;
    const years = (number(check, 'days') ?? 0) / YEAR;
    const applications = [sulfur((number(check, 'S_kg_per_ha') ?? 0) / 1e4, depth, grade('micronized sulfur'), false)];
    const trial: Trial = { ph: number(check, 'pH0') ?? 0, depth, temperature: 20, pot: false, applications };
    return { pH: course(trial, years + 0.05).at(years) };
  },
};

/** kg/m³ of one lb/yd³. */
const PER_YARD = 0.45359237 / 0.764554857984;

const sulfurInPots: Adapter = {
  name: 'pH of a container mix after sulfur',
  accepts: (check) => has(check, 'S_lb_per_yd3') && wants(check, 'final_pH_below'),
  compute(check) {
    const depth = 0.1;
    const dose = (number(check, 'S_lb_per_yd3') ?? 0) * PER_YARD * depth;
    const trial: Trial = {
      ph: 6,
      depth,
      soilless: true,
      pot: true,
      own: 0,
      temperature: 20,
      massPerHa: 12.4e4,
      // Peat mix, 2.2 kg CaCO3/m³/pH (COMPEAT) in 124 kg.
      beta: 2.2 / 124 / MMOL,
      applications: [sulfur(dose, depth, grade('sulfur dust'))],
    };
    return { final_pH_below: course(trial, 1).at(1) };
  },
};

const sulfurStore: Adapter = {
  name: 'pH beside a sulfur store',
  accepts: (check) => has(check, 'S_mg_per_kg', 'layer') && wants(check, 'pH'),
  compute(check) {
    const mass = 10;
    const trial: Trial = {
      ph: 4.5,
      depth: 0.05,
      massPerHa: mass * 1e4,
      // Raw humus taken like peat (COMPEAT).
      beta: 2.2 / 124 / MMOL,
      soilless: String(check.inputs.layer) === 'organic',
      climate: 'humid temperate inland',
      applications: [sulfur((number(check, 'S_mg_per_kg') ?? 0) * 1e-6 * mass, 0.05, grade('sulfur dust'))],
    };
    return { pH: course(trial, 5).at(5) };
  },
};

export const trials: readonly Adapter[] = [
  dissolvesInField,
  fractionsConverge,
  firstMonths,
  limedPaddocks,
  baseLoss,
  peakYears,
  longDrift,
  lightDrift,
  limeIncubation,
  nextLayer,
  depthReached,
  sulfurInField,
  sulfurInPots,
  sulfurStore,
];
