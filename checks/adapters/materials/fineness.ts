import {
  classFactor,
  effectiveFromIndex,
  effectivePrice,
  effectiveProportion,
  efficiencyOfShares,
  efficiencyOfSieves,
  type Fineness,
  factorClasses,
  limeIndex,
  poundsEqualToTon,
} from '@sorrel/engine/materials';
import type { Adapter, CheckCase } from '../../adapter.ts';
import { boundsOf, classShares, isSizeTable, passingSieves, retainedSieves } from './screens.ts';
import { answers, expects, given, kgIn, numberAt, tableAt, textAt } from './shapes.ts';

const INDEX = /ENP|ECCE|ENM|ENV|RNV|^ECC|^NI\b|lime_score|score|effective_(CC|NV)|^index/;
const EFFICIENCY = /^(T?FE|FF|FI|efficiency|fineness)/i;

/** Cases without a system follow the garden default, as the product does. */
const systemOf = ({ inputs }: CheckCase): string => textAt(inputs, /^(system|state|rule|method)$/) ?? 'OH';

const sizesIn = ({ inputs }: CheckCase) =>
  Object.entries(inputs).find(([key]) => isSizeTable(tableAt(inputs, new RegExp(`^${key}$`))));

/** Whether a case gives sieve figures or an efficiency. */
export const hasFineness = (check: CheckCase): boolean =>
  sizesIn(check) !== undefined || numberAt(check.inputs, EFFICIENCY) !== undefined;

export function efficiencyOf(check: CheckCase): number {
  const printed = numberAt(check.inputs, EFFICIENCY);
  if (printed !== undefined) return printed / 100;
  const found = sizesIn(check);
  if (found === undefined) throw new Error('no fineness figures');
  const [key, table] = found as [string, Readonly<Record<string, number>>];
  const system = systemOf(check);
  let fineness: Fineness;
  if (/pass|through|cumul/i.test(key)) fineness = given(efficiencyOfSieves(system, passingSieves(table, key)));
  else if (/retain/i.test(key)) fineness = given(efficiencyOfSieves(system, retainedSieves(table, key)));
  else if (Object.keys(table).every((name) => /^[\d.]+$/.test(name)))
    fineness = given(efficiencyOfSieves(system, passingSieves(table, key)));
  else fineness = given(efficiencyOfShares(system, classShares(table, key)));
  return fineness.efficiency;
}

const percent = (check: CheckCase, key: RegExp): number | undefined => {
  const value = numberAt(check.inputs, key);
  return value === undefined ? undefined : value / 100;
};

function indexFigure(check: CheckCase, key: string): number {
  const system = systemOf(check);
  const quality = {
    neutralisingValue: percent(check, /^(CCE|NV|TNP|total_neutrali|neutrali)/) ?? 1,
    efficiency: efficiencyOf(check),
    moisture: percent(check, /moist|water/) ?? 0,
  };
  const index = limeIndex(system, quality);
  const effective = effectiveFromIndex(system, index.value);
  if (/lb_per_ton/.test(key) && system !== 'MO') return 2000 * effective;
  // A key that is not the system's own index asks for the effective percentage.
  return /pct|percent/.test(key) || !key.startsWith(index.name.split(' ')[0] ?? '') ? 100 * effective : index.value;
}

/** Fineness efficiency and quality indices, size classes, effective price. */
export const fineness: readonly Adapter[] = [
  {
    name: 'fineness efficiency and lime index',
    accepts: (check) =>
      hasFineness(check) &&
      !('NV_class' in check.inputs) &&
      !expects(check, /cost|price/) &&
      (expects(check, EFFICIENCY) || expects(check, INDEX)),
    compute: (check) =>
      answers(check, (key) => {
        if (EFFICIENCY.test(key)) return efficiencyOf(check) * (/fraction/.test(key) ? 1 : 100);
        return INDEX.test(key) ? indexFigure(check, key) : undefined;
      }),
  },
  {
    name: 'factor of one size class',
    accepts: (check) => textAt(check.inputs, /^class/) !== undefined && 'factor' in check.expected,
    compute: (check) => {
      const [key = '', label] = Object.entries(check.inputs).find(([name]) => /^class/.test(name)) ?? [];
      return { factor: classFactor(factorClasses(systemOf(check)), boundsOf(String(label), key)) };
    },
  },
  {
    name: 'effective proportion with a value for each class',
    accepts: (check) =>
      Object.keys(check.inputs).some((key) => /^NV_(by_)?class/.test(key)) && expects(check, /^EP|effective/),
    compute: (check) => {
      const { inputs } = check;
      const shares = tableAt(inputs, /^class(es)?_pct|^pct/);
      const values = tableAt(inputs, /^NV_/);
      const classes =
        shares === undefined || values === undefined
          ? [
              {
                share: (numberAt(inputs, /^class_pct/) ?? 0) / 100,
                neutralisingValue: (numberAt(inputs, /^NV_/) ?? 0) / 100,
                factor: numberAt(inputs, /^factor/) ?? 1,
              },
            ]
          : Object.entries(shares).map(([label, share]) => ({
              share: share / 100,
              neutralisingValue: (values[label] ?? 0) / 100,
              factor:
                tableAt(inputs, /^factor/)?.[label] ??
                classFactor(factorClasses('WA_AU'), boundsOf(label, 'mm')) ??
                Number.NaN,
            }));
      return answers(check, () => 100 * effectiveProportion(classes));
    },
  },
  {
    name: 'price of what works',
    accepts: (check) => expects(check, /cost|price/) && numberAt(check.inputs, /cost|price|usd|dollars/) !== undefined,
    compute: (check) => {
      const price = numberAt(check.inputs, /cost|price|usd|dollars/) ?? 0;
      const whole = percent(check, /^(EP|ENV|RNV|ECCE|ECC|index)/);
      const fine = hasFineness(check) ? efficiencyOf(check) : 1;
      const dry = 1 - (percent(check, /moist/) ?? 0);
      const index = whole ?? (percent(check, /^(CCE|NV)/) ?? 1) * fine * dry;
      const [bagKey, bag] = Object.entries(check.inputs).find(
        ([key, value]) => /^(bag_)?(lb|kg|ton|mass)/.test(key) && typeof value === 'number',
      ) ?? ['', 1];
      return answers(check, (key) => {
        const each = effectivePrice(price, index) / Number(bag);
        return bagKey === '' || kgIn(bagKey) === kgIn(key) ? each : (each * kgIn(key)) / kgIn(bagKey);
      });
    },
  },
  {
    name: 'pounds equal to a ton of standard lime',
    accepts: (check) => expects(check, /equal_to_(1|one|a)_?ton/) && numberAt(check.inputs, /^(CCE|NV)/) !== undefined,
    compute: (check) =>
      answers(check, () => poundsEqualToTon(percent(check, /^(CCE|NV)/) ?? 1, percent(check, /standard/) ?? 0.9)),
  },
];
