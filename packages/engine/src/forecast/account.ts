import { YEAR_DAYS } from './dates.ts';
import { FLUXES, type Flux } from './ledger.ts';
import type { Simulation } from './model.ts';
import type { Account, AccountEntry, AccountYear, ForecastInput } from './types.ts';

/** Fast materials slower than this are compost or manure, quicker ones ash or hydrated lime. */
const COMPOST_DAYS = 60;

const entries = (): Record<AccountEntry, number> => ({
  lime: 0,
  'ash and fast lime': 0,
  compost: 0,
  sulfur: 0,
  sulfates: 0,
  'not mixed in': 0,
  'rain and soil': 0,
  fertilizer: 0,
  water: 0,
  crops: 0,
  'organic matter': 0,
  leaching: 0,
  aluminium: 0,
  carbonate: 0,
  'exchange below': 0,
});

/** Share of the positive fast materials that is compost, by their currency. */
function compostShare(input: Pick<ForecastInput, 'applications'>): number {
  let compost = 0;
  let all = 0;
  for (const { reaction, currency } of input.applications)
    if (reaction.law === 'fast' && currency > 0) {
      all += currency;
      if (reaction.days >= COMPOST_DAYS) compost += currency;
    }
  return all > 0 ? compost / all : 0;
}

/**
 * The acid-base account of a run, year by year: what pushed the pH, kg CaCO3/m². The entries add up to the change of the
 * soil's base content, which is read from the soil itself.
 */
export function account(input: ForecastInput, simulation: Simulation): Account {
  const { scenario, ledger, dates, ph, left, content } = simulation;
  const { steps, stepDays, charges, fixedParts } = scenario;
  const compostOfGiven = compostShare(input);
  const stepsPerYear = Math.max(1, Math.round(YEAR_DAYS / stepDays));
  const years: AccountYear[] = [];
  for (let from = 0; from < steps; from += stepsPerYear) {
    const to = Math.min(steps, from + stepsPerYear);
    const sum = entries();
    for (let t = from; t < to; t++) {
      const flux = (name: Flux) => ledger[t * FLUXES.length + FLUXES.indexOf(name)] ?? 0;
      const given = flux('given');
      sum.lime += flux('lime');
      sum.sulfur += flux('sulfur');
      sum.compost += given * compostOfGiven + (fixedParts.compost[t] ?? 0);
      sum['ash and fast lime'] += given * (1 - compostOfGiven);
      sum.sulfates += flux('taken');
      sum['not mixed in'] += flux('missed');
      sum['rain and soil'] += flux('own');
      sum.fertilizer += flux('nitrogen');
      sum.water += fixedParts.water[t] ?? 0;
      sum.crops += fixedParts.crops[t] ?? 0;
      sum['organic matter'] += fixedParts['organic matter'][t] ?? 0;
      sum.leaching += flux('leaching');
      sum.aluminium += flux('aluminium');
      sum.carbonate += flux('carbonate');
      sum['exchange below'] += flux('exchange');
    }
    years.push({
      from: dates[from] ?? '',
      to: dates[to] ?? '',
      entries: sum,
      change: Object.values(sum).reduce((total, value) => total + value, 0),
      ph: { start: ph[from] ?? Number.NaN, end: ph[to] ?? Number.NaN },
    });
  }
  const unreacted = { lime: 0, sulfur: 0 };
  for (let c = 0; c < charges.count; c++) {
    const rest = (charges.amount[c] ?? 0) * (left[steps * charges.count + c] ?? 0);
    if (charges.sulfur[c] === 1) unreacted.sulfur -= rest;
    else unreacted.lime += rest;
  }
  return { years, content: { start: content[0] ?? 0, end: content[1] ?? 0 }, unreacted };
}
