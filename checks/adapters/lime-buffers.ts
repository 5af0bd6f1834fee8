import {
  adamsEvansH,
  adamsEvansLbPerAcre,
  type KansasTarget,
  kansasLbPerAcre,
  mehlich1976TonnePerHectare,
  mehlichAcidity,
  type NcSoilClass,
  ncFactor,
  ncMehlichShortTonPerAcre,
  ncResidualShare,
  osuSikoraShortTonPerAcre,
  type PsuTarget,
  psuLbCcePerAcre,
  psuTurfLbPer1000SqFt,
  type SmpColumn,
  smpTableShortTonPerAcre,
  type TriStateTarget,
  triStateOrganicShortTonPerAcre,
  triStateShortTonPerAcre,
} from '../../packages/engine/src/requirement/index.ts';
import {
  LB_PER_1000_SQ_FT,
  LB_PER_ACRE,
  SHORT_TON_PER_ACRE,
  TONNE_PER_HECTARE,
} from '../../packages/engine/src/requirement/published-units.ts';
import type { Adapter, CheckCase } from '../adapter.ts';
import { input, isFrom, method, need, shaped, words } from './lime-shape.ts';

const bufferPh = (check: CheckCase): number => input(check, 'SMP_BpH') ?? need(check, 'BpH');
/** No method named, or one whose name starts so. */
const named = (check: CheckCase, ...starts: readonly string[]): boolean =>
  method(check) === '' || starts.some((start) => method(check).startsWith(start));

const acidityOf = (check: CheckCase): number => input(check, 'AC') ?? mehlichAcidity(need(check, 'BpH'));
const northCarolina: Omit<Parameters<typeof shaped>[0], 'needs' | 'name'> = {
  may: ['method', 'RC', 'AC', 'BpH'],
  when: (check) => method(check).startsWith('nc') || (method(check) === '' && !('BpH' in check.inputs)),
  rate: (check) =>
    ncMehlichShortTonPerAcre(acidityOf(check), need(check, 'pH'), need(check, 'target'), input(check, 'RC')) *
    SHORT_TON_PER_ACRE,
  figures: (check) => ({ factor: ncFactor(need(check, 'pH'), need(check, 'target')) }),
};

const ncSoils: Readonly<Record<string, NcSoilClass>> = {
  min: 'mineral',
  mineral: 'mineral',
  'm-o': 'mineral-organic',
  'mineral-organic': 'mineral-organic',
  org: 'organic',
  organic: 'organic',
};

/** Column of the SMP table for a target as the cases word it; 7.0 is the pure column unless limestone is named. */
function smpColumn(check: CheckCase): SmpColumn {
  const target = words(check, 'target');
  const material = words(check, 'material');
  if (target.includes('organic') || target === '5.2') return 'organic 5.2';
  if (target === '6.5') return 'ag-ground 6.5';
  if (target === '6.0' || target === '6') return 'ag-ground 6.0';
  if (target.includes('6.8') || material.includes('ag') || target.includes('ag')) return 'ag-ground top';
  return 'pure 7.0';
}

export const limeBuffers: readonly Adapter[] = [
  shaped({
    name: 'North Carolina acidity and pH ratio',
    needs: ['pH', 'target'],
    ...northCarolina,
  }),
  shaped({
    name: 'Mehlich buffer acidity',
    needs: ['BpH'],
    may: ['method'],
    figures: (check) => ({ AC_meq_100cm3: mehlichAcidity(need(check, 'BpH')) }),
  }),
  shaped({
    name: 'North Carolina credit for earlier lime',
    needs: ['soil', 'months_since_lime'],
    may: ['previous_short_ton_per_acre'],
    when: (check) => words(check, 'soil') in ncSoils,
    figures: (check) => ({
      fraction_of_previous_dose_still_credited: ncResidualShare(
        ncSoils[words(check, 'soil')] as NcSoilClass,
        need(check, 'months_since_lime'),
      ),
    }),
  }),
  shaped({
    name: 'Mehlich 1976',
    needs: ['AC'],
    may: ['method'],
    rate: (check) => mehlich1976TonnePerHectare(need(check, 'AC')) * TONNE_PER_HECTARE,
    figures: (check) => {
      const meq = mehlich1976TonnePerHectare(need(check, 'AC'));
      return { LR: meq, meq, meq_100cm3: meq, meq_per_100cm3: meq, LR_meq_100cm3: meq };
    },
  }),
  shaped({
    name: 'Pennsylvania exchangeable acidity',
    needs: ['EA', 'target'],
    may: ['pH', 'method'],
    rate: (check) =>
      psuLbCcePerAcre(need(check, 'EA'), need(check, 'target') as PsuTarget, input(check, 'pH')) * LB_PER_ACRE,
  }),
  shaped({
    name: 'Pennsylvania turf table',
    needs: ['EA', 'goal'],
    rate: (check) => psuTurfLbPer1000SqFt(need(check, 'EA'), need(check, 'goal') as PsuTarget) * LB_PER_1000_SQ_FT,
  }),
  shaped({
    name: 'Oregon Sikora table',
    needs: ['BpH', 'target'],
    may: ['method', 'pH'],
    when: (check) => method(check).startsWith('osu') || (method(check) === '' && isFrom(check, 'OSU-EM9585')),
    rate: (check) => osuSikoraShortTonPerAcre(need(check, 'BpH'), need(check, 'target')) * SHORT_TON_PER_ACRE,
  }),
  ...['BpH', 'SMP_BpH'].map((key) =>
    shaped({
      name: 'Kansas equation',
      needs: [key, 'target'],
      may: ['method', 'depth_in'],
      when: (check) => method(check).startsWith('kansas') || (method(check) === '' && isFrom(check, 'KSU-MF2586')),
      rate: (check) =>
        kansasLbPerAcre(bufferPh(check), need(check, 'target') as KansasTarget, input(check, 'depth_in') ?? 6) *
        LB_PER_ACRE,
    }),
  ),
  shaped({
    name: 'Tri-State lime test index',
    needs: ['LTI', 'target'],
    may: ['method'],
    rate: (check) =>
      triStateShortTonPerAcre(need(check, 'LTI'), need(check, 'target') as TriStateTarget) * SHORT_TON_PER_ACRE,
  }),
  shaped({
    name: 'Tri-State organic soil',
    needs: ['pH'],
    may: ['method', 'soil', 'target'],
    when: (check) => method(check).startsWith('tristate') || (method(check) === '' && isFrom(check, 'TriState1995')),
    rate: (check) => triStateOrganicShortTonPerAcre(need(check, 'pH')) * SHORT_TON_PER_ACRE,
  }),
  shaped({
    name: 'SMP table',
    needs: ['SMP_BpH', 'target'],
    may: ['method', 'material'],
    when: (check) => named(check, 'smp'),
    rate: (check) => smpTableShortTonPerAcre(need(check, 'SMP_BpH'), smpColumn(check)) * SHORT_TON_PER_ACRE,
  }),
  shaped({
    name: 'Adams-Evans acid saturation',
    needs: ['pH'],
    may: ['method'],
    figures: (check) => ({ H: adamsEvansH(need(check, 'pH')) }),
  }),
  shaped({
    name: 'Adams-Evans requirement',
    needs: ['pH', 'BpH', 'target'],
    may: ['method', 'allowance', 'k'],
    when: (check) => named(check, 'adams'),
    rate: (check) =>
      adamsEvansLbPerAcre(
        need(check, 'pH'),
        need(check, 'BpH'),
        need(check, 'target'),
        input(check, 'allowance') ?? input(check, 'k'),
      ) * LB_PER_ACRE,
    figures: (check) => ({ H1: adamsEvansH(need(check, 'pH')), H2: adamsEvansH(need(check, 'target')) }),
  }),
];
