import { addDays, dayOfYear, daysBetween, YEAR_DAYS } from './dates.ts';
import { limeMoistureFactor, limeTemperatureFactor } from './dissolve.ts';
import { waterAlkalinity } from './drift.ts';
import { planLayers } from './layers.ts';
import { lossTable, STEPS } from './loss-table.ts';
import { sulfurMoistureFactor, sulfurTemperatureFactor } from './oxidise.ts';
import { EQUIVALENT, P } from './parameters.ts';
import { sizeClasses } from './sieve-classes.ts';
import type { ForecastInput } from './types.ts';
import { type PlaceWeather, placeWeather } from './weather.ts';

/** Materials that shrink, one entry a material and layer. */
export interface Charges {
  readonly count: number;
  readonly layer: Int32Array;
  /** First step in which it acts. */
  readonly start: Int32Array;
  /** Share of that step it lies in the ground. */
  readonly firstShare: Float64Array;
  /** kg CaCO3/m², positive for both kinds. */
  readonly amount: Float64Array;
  readonly sulfur: Uint8Array;
  readonly waits: Uint8Array;
  readonly speed: Float64Array;
  /** Place of its loss table in `tables`. */
  readonly table: Int32Array;
  readonly inverseEnd: Float64Array;
  /** Days at 20 °C (lime) or 25 °C (sulfur) that it lay in the ground before the start. */
  readonly head: Float64Array;
}

/** All that the members of an ensemble share, step by step. Built once a forecast. */
export interface Scenario {
  readonly steps: number;
  readonly stepDays: number;
  readonly layers: number;
  /** The upper layers whose mean is the bed's pH. */
  readonly reported: number;
  readonly mass: Float64Array;
  /** Share of the reported mass; 0 below. */
  readonly weight: Float64Array;
  /** Share of what falls on the surface: 1 for the uppermost layer. */
  readonly top: Float64Array;
  /** pH of the layer less that of the bed at the start. */
  readonly layerOffset: Float64Array;
  /** Days at 20 °C and field capacity. */
  readonly limeDays: Float64Array;
  /** Days at 25 °C and field capacity. */
  readonly sulfurDays: Float64Array;
  /** m of water. */
  readonly drainage: Float64Array;
  /** Length of the step in years. */
  readonly stepYears: number;
  /** Nitrogen fed in a step, kg N/m². */
  readonly nitrogen: number;
  readonly nitrogenCharge: number;
  /** Water, compost, crops and organic matter together, kg CaCO3/m². */
  readonly fixed: Float64Array;
  /** Parts of `fixed`, for the account. */
  readonly fixedParts: Readonly<Record<'water' | 'compost' | 'crops' | 'organic matter', Float64Array>>;
  /** Base and acid of fast materials, kg CaCO3/m², `[step * layers + layer]`, both positive. */
  readonly given: Float64Array;
  readonly taken: Float64Array;
  /** Soil swapped between neighbouring layers in a step, kg/m². */
  readonly swap: number;
  /** kg CaCO3 per kg soil. */
  readonly carbonate: number;
  /** Share of the shortfall that carbonate makes good in one step. */
  readonly carbonateRate: number;
  /** K_Al; 0 in soilless mixes and organic soil, whose aluminium is scarce or bound to the humus (TEXT, from memory). */
  readonly gibbsite: number;
  readonly charges: Charges;
  readonly tables: Float64Array;
}

export interface ScenarioOptions {
  /** Length of a step, days; default 7. */
  readonly stepDays?: number;
  /** Longer than five years is for comparing with long trials. */
  readonly steps?: number;
  /** Layers under the reported ones, from the top: thickness, m, and pH less the bed's. */
  readonly below?: readonly { readonly depth: number; readonly offset?: number }[];
}

/** Days that a step is worth at the reference temperature (20 °C lime, 25 °C sulfur) and field capacity. */
function factorDays(weather: PlaceWeather, anyDay: number, days: number, law: 'dissolving' | 'oxidising'): number {
  const day = ((anyDay % YEAR_DAYS) + YEAR_DAYS) % YEAR_DAYS;
  const temperature = weather.temperature(day);
  const moisture = weather.moisture(day);
  return law === 'dissolving'
    ? days * limeTemperatureFactor(temperature) * limeMoistureFactor(moisture)
    : days * sulfurTemperatureFactor(temperature) * sulfurMoistureFactor(moisture);
}

/** Works out what all members share: weather, layers, materials, yearly inputs. */
export function scenario(input: ForecastInput, options: ScenarioOptions = {}): Scenario {
  const stepDays = options.stepDays ?? 7;
  const steps = options.steps ?? Math.round(((input.years ?? 3) * YEAR_DAYS) / stepDays);
  const plan = planLayers(input, options.below);
  const layers = plan.length;
  const reportedLayers = plan.filter((layer) => layer.reported);
  const reportedMass = reportedLayers.reduce((sum, layer) => sum + layer.mass, 0);
  const weather = placeWeather(input);
  const series = () => new Float64Array(steps);
  const limeDays = series();
  const sulfurDays = series();
  const drainage = series();
  const water = series();
  const compost = series();
  const crops = series();
  const organic = series();
  const fixed = series();
  const yearly = input.yearly ?? {};
  const firstDay = dayOfYear(input.start);
  for (let t = 0; t < steps; t++) {
    const day = (firstDay + (t + 0.5) * stepDays) % YEAR_DAYS;
    const year = stepDays / YEAR_DAYS;
    limeDays[t] = factorDays(weather, day, stepDays, 'dissolving');
    sulfurDays[t] = factorDays(weather, day, stepDays, 'oxidising');
    drainage[t] = weather.drainage(day) * stepDays;
    water[t] = waterAlkalinity(weather.irrigation(day) * stepDays, yearly.waterAlkalinity ?? 0);
    compost[t] = (yearly.compost ?? 0) * year;
    crops[t] = -(yearly.crop ?? 0) * year;
    // 0.3 mol H+ per kg C stored (TEXT, from memory).
    organic[t] = -(yearly.carbonStored ?? 0) * 0.3 * EQUIVALENT * year;
    fixed[t] = (water[t] ?? 0) + (compost[t] ?? 0) + (crops[t] ?? 0) + (organic[t] ?? 0);
  }
  const { charges, tables, given, taken } = materials(input, plan, weather, steps, stepDays);
  return {
    steps,
    stepDays,
    layers,
    reported: reportedLayers.length,
    mass: Float64Array.from(plan, (layer) => layer.mass),
    weight: Float64Array.from(plan, (layer) => (layer.reported ? layer.mass / reportedMass : 0)),
    top: Float64Array.from(plan, (_, l) => (l === 0 ? 1 : 0)),
    layerOffset: Float64Array.from(plan, (layer) => layer.offset),
    limeDays,
    sulfurDays,
    drainage,
    stepYears: stepDays / YEAR_DAYS,
    nitrogen: ((yearly.nitrogen?.amount ?? 0) * stepDays) / YEAR_DAYS,
    nitrogenCharge: yearly.nitrogen?.charge ?? 0,
    fixed,
    fixedParts: { water, compost, crops, 'organic matter': organic },
    given,
    taken,
    swap: (P.exchange.centre * input.layer.bulkDensity * stepDays) / YEAR_DAYS,
    carbonate: input.curve.carbonate,
    carbonateRate: Math.min(1, stepDays / P.tauCarbonate),
    gibbsite: input.medium === 'soilless' || input.medium === 'organic' ? 0 : P.gibbsite,
    charges,
    tables,
  };
}

/** Spreads each application over the layers it is mixed into and sorts it by how it reacts. */
function materials(
  input: ForecastInput,
  plan: ReturnType<typeof planLayers>,
  weather: PlaceWeather,
  steps: number,
  stepDays: number,
): Pick<Scenario, 'charges' | 'tables' | 'given' | 'taken'> {
  const layers = plan.length;
  const firstDay = dayOfYear(input.start);
  const given = new Float64Array(steps * layers);
  const taken = new Float64Array(steps * layers);
  const shrinking: {
    layer: number;
    start: number;
    firstShare: number;
    amount: number;
    sulfur: boolean;
    waits: boolean;
    speed: number;
    table: number;
    end: number;
    head: number;
  }[] = [];
  const tables: Float64Array[] = [];
  for (const application of input.applications) {
    const laid = daysBetween(input.start, application.date) / stepDays;
    const start = Math.floor(laid);
    if (start >= steps) continue;
    const depth = Math.max(application.incorporation, plan[0]?.bottom ?? 0, 1e-3);
    const { reaction } = application;
    const parts = plan.map((layer) => Math.max(0, Math.min(layer.bottom, depth) - layer.top) / depth);
    if (reaction.law === 'fast') {
      const series = application.currency >= 0 ? given : taken;
      for (let t = Math.max(0, start); t < steps; t++) {
        const age = (step: number) => Math.max(0, step - laid) * stepDays;
        const share = Math.exp(-age(t) / reaction.days) - Math.exp(-age(t + 1) / reaction.days);
        for (const [l, part] of parts.entries()) {
          const at = t * layers + l;
          series[at] = (series[at] ?? 0) + Math.abs(application.currency) * part * share;
        }
      }
      continue;
    }
    const table = lossTable(sizeClasses(reaction.sieves));
    let head = 0;
    for (let t = start; t < 0; t++)
      head += factorDays(weather, firstDay + (t + 0.5) * stepDays, stepDays, reaction.law);
    tables.push(table.left);
    for (const [l, part] of parts.entries())
      if (part > 0)
        shrinking.push({
          layer: l,
          start: Math.max(0, start),
          firstShare: start < 0 ? 1 : 1 - (laid - start),
          amount: Math.abs(application.currency) * part,
          sulfur: reaction.law === 'oxidising',
          waits: reaction.law === 'oxidising' && reaction.waits,
          speed: reaction.speed,
          table: (tables.length - 1) * (STEPS + 2),
          end: table.end,
          head,
        });
  }
  const joined = new Float64Array(tables.length * (STEPS + 2));
  for (const [i, table] of tables.entries()) joined.set(table, i * (STEPS + 2));
  const charges: Charges = {
    count: shrinking.length,
    layer: Int32Array.from(shrinking, (c) => c.layer),
    start: Int32Array.from(shrinking, (c) => c.start),
    firstShare: Float64Array.from(shrinking, (c) => c.firstShare),
    amount: Float64Array.from(shrinking, (c) => c.amount),
    sulfur: Uint8Array.from(shrinking, (c) => (c.sulfur ? 1 : 0)),
    waits: Uint8Array.from(shrinking, (c) => (c.waits ? 1 : 0)),
    speed: Float64Array.from(shrinking, (c) => c.speed),
    table: Int32Array.from(shrinking, (c) => c.table),
    inverseEnd: Float64Array.from(shrinking, (c) => 1 / c.end),
    head: Float64Array.from(shrinking, (c) => c.head),
  };
  return { charges, tables: joined, given, taken };
}

/** Dates of the steps: the start and every step after it. */
export function stepDates(input: Pick<ForecastInput, 'start'>, steps: number, stepDays: number): string[] {
  return Array.from({ length: steps + 1 }, (_, t) => addDays(input.start, t * stepDays));
}
