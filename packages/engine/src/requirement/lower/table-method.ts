import type { Message } from '../../derivation/message.ts';
import { ACID_PER_SULFUR } from '../../materials/sulfur-equivalent.ts';
import type { Metre, Ph } from '../../units/si.ts';
import type { MethodInput, RequirementMethod } from '../method.ts';
import { NOT_GIVEN } from '../outcome.ts';
import { LEAST_GAP } from '../targets.ts';
import { impliedByFall, TABLE_DENSITY, TABLE_DEPTH, textureOf } from './below.ts';
import { limyReason } from './limy.ts';
import { KG_PER_M2 } from './rate.ts';
import { amountFrom, type RateColumn, rateTable } from './rate-table.ts';

export interface TableFacts {
  readonly id: string;
  readonly title: string;
  /** Citation key of its rows in the almanac's `sulfur-rates`. */
  readonly publication: string;
  readonly regions: readonly string[];
  /** pH between which it may be read. */
  readonly lowest: Ph;
  readonly highest: Ph;
  /** Depth the rate is meant for; 15.24 cm where none is printed. */
  readonly depth?: Metre;
  readonly sdLog: RequirementMethod['sdLog'];
  readonly domain: string;
  readonly basis: 'read' | 'memory';
  /** Places it speaks of at all, when not any mineral soil of a named texture. */
  readonly speaksOf?: (input: MethodInput) => boolean;
  /** True when the rate does not ask for a texture. */
  readonly withoutTexture?: boolean;
}

/**
 * A published sulfur table as a requirement method. All of them rest on texture alone, so the reconciler lets one
 * speak; they repeat one nearly linear rule and are no independent evidence of each other.
 */
export function tableMethod(facts: TableFacts): RequirementMethod {
  const depth = facts.depth ?? TABLE_DEPTH;
  const outside = (code: Message['code'], parameters: Message['parameters'] = {}) => ({
    state: 'outside' as const,
    reason: { code, parameters: { table: facts.title, ...parameters } },
  });
  const columns = rateTable(facts.publication);
  const served = new Map<string, RateColumn>();
  for (const column of columns) for (const name of column.classes) served.set(name, column);
  for (const column of columns) served.set(column.texture, column);
  const method: RequirementMethod = {
    id: facts.id,
    title: facts.title,
    kind: 'texture',
    direction: 'lower',
    regions: facts.regions,
    referenceDepth: depth,
    allowance: 1,
    sdLog: facts.sdLog,
    domain: facts.domain,
    sources: [...new Set(columns.flatMap((column) => column.rows.flatMap((row) => row.sources)))],
    basis: facts.basis,
    read(input, recorder) {
      const { mean } = input.present;
      if (mean - input.targetPh < LEAST_GAP) return NOT_GIVEN;
      if (facts.speaksOf !== undefined && !facts.speaksOf(input)) return NOT_GIVEN;
      const texture = textureOf(input);
      const wanted = facts.withoutTexture ? undefined : input.medium === 'organic' ? 'organic' : texture;
      if (wanted === undefined && !facts.withoutTexture) return NOT_GIVEN;
      const column = wanted === undefined ? columns[0] : served.get(wanted);
      if (!facts.withoutTexture && input.medium !== 'mineral' && (column === undefined || input.medium !== 'organic'))
        return outside('lower.not-for-medium');
      const limy = limyReason(input, facts.title);
      if (limy !== undefined) return { state: 'outside', reason: limy };
      if (column === undefined) return outside('lower.no-column', { texture: wanted ?? '' });
      if (mean > facts.highest + 1e-9) return outside('lower.above-table', { highest: facts.highest });
      const to = Math.max(input.targetPh, facts.lowest);
      if (mean - to < LEAST_GAP) return outside('lower.below-table', { lowest: facts.lowest });
      const amount = amountFrom(column, mean, to);
      if (amount === undefined) return outside('lower.above-table', { highest: facts.highest });
      const value = (amount.low + amount.high) / 2;
      const fall = {
        value,
        unit: `${column.unit} of sulfur`,
        acid: value * KG_PER_M2[column.unit] * ACID_PER_SULFUR,
        from: mean,
        to,
        soilMass: depth * TABLE_DENSITY,
      };
      return impliedByFall(method, input, fall, recorder);
    },
  };
  return method;
}
