import { type FastAcidifierRow, fastAcidifiers } from '@sorrel/almanac/fast-acidifiers';
import type { KgPerM2, Ph } from '../../units/si.ts';
import { KG_PER_M2 } from './rate.ts';

export type Sulfate = 'iron sulfate' | 'aluminium sulfate' | 'ammonium sulfate' | 'sulfuric acid';

export interface SulfateMultiple {
  /** kg of the material in place of 1 kg of sulfur. */
  readonly value: number;
  /** Which hydrate; undefined when the publication does not say, and then the label must be read. */
  readonly formula: string | undefined;
  readonly sources: readonly string[];
  readonly basis: FastAcidifierRow['basis'];
}

const multipleOf = (row: FastAcidifierRow): SulfateMultiple => ({
  value: row.value,
  formula: row.formula,
  sources: row.sources,
  basis: row.basis,
});

/**
 * What publications print in place of 1 kg of sulfur; `massPerSulfur` gives it from a formula. The figures for iron sulfate fit neither of its hydrates.
 *
 * @param publication citation key; all publications when left out
 */
export function sulfatePublished(material: Sulfate, publication?: string): readonly SulfateMultiple[] {
  return fastAcidifiers
    .filter(
      (row) =>
        row.how === 'published' &&
        row.material === material &&
        (publication === undefined || row.sources.includes(publication)),
    )
    .map(multipleOf);
}

/**
 * Aluminium sulfate a table prints from one pH to another. A lookup: aluminium sulfate is for the colour of
 * hydrangeas, not for beds, because aluminium harms roots in sour soil.
 *
 * @returns kg/m², `undefined` where nothing is printed
 * @source almanac `fast-acidifiers` (HGIC, memory)
 */
export function aluminiumSulfatePublished(publication: string, from: Ph, to: Ph): KgPerM2 | undefined {
  const cells = fastAcidifiers.filter((row) => row.how === 'published cell' && row.sources.includes(publication));
  const cell = cells.find((row) => row.phFrom === from && row.phTo === to);
  return cell && cell.value * KG_PER_M2['lb/10 sq ft'];
}
