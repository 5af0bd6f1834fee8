import * as z from 'zod';
import { planReport } from './plan-report.ts';
import { gardenDocument } from './schema.ts';

/** The garden document as JSON Schema 2020-12, for editors and other programs. */
export const gardenJsonSchema = (): Record<string, unknown> =>
  z.toJSONSchema(gardenDocument, { target: 'draft-2020-12', io: 'input' });

/** The plan report as JSON Schema 2020-12. */
export const planReportJsonSchema = (): Record<string, unknown> =>
  z.toJSONSchema(planReport, { target: 'draft-2020-12', io: 'input' });
