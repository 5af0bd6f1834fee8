import type { Product } from '../materials/material.ts';
import { productFrom } from '../materials/product.ts';
import { type Report, readFields } from './fields.ts';
import type { Path } from './issue.ts';
import { limits } from './limits.ts';
import { measure } from './measure.ts';
import { material as materialSchema } from './schema.ts';

/** A material the gardener has or can buy, with what its label says. */
export function readMaterial(typed: unknown, at: Path, finenessSystem: string, report: Report): Product | undefined {
  const { fields, bad } = readFields(materialSchema.shape, typed, at, report);
  if (bad.size > 0 || fields.material === undefined) return undefined;
  return undefined;
}
