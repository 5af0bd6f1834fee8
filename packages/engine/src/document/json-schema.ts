import * as z from 'zod';
import { accountReport } from './account-report.ts';
import { comparisonReport } from './comparison-report.ts';
import { forecastReport } from './forecast-report.ts';
import { learnedReport } from './learned-report.ts';
import { planReport } from './plan-report.ts';
import { gardenDocument } from './schema.ts';
import { usableReport } from './usable-report.ts';

/** The garden document as JSON Schema 2020-12, for editors and other programs. */
export const gardenJsonSchema = (): Record<string, unknown> => published(gardenDocument);

/** The plan report as JSON Schema 2020-12. */
export const planReportJsonSchema = (): Record<string, unknown> => published(planReport);

/** What the commands that look ahead and back print, by the command. */
export const forecastReportJsonSchema = (): Record<string, unknown> => published(forecastReport);
export const accountReportJsonSchema = (): Record<string, unknown> => published(accountReport);
export const learnedReportJsonSchema = (): Record<string, unknown> => published(learnedReport);
export const comparisonReportJsonSchema = (): Record<string, unknown> => published(comparisonReport);

/** What `sorrel usable --json` prints. */
export const usableReportJsonSchema = (): Record<string, unknown> => published(usableReport);

const published = (schema: z.ZodType): Record<string, unknown> =>
  z.toJSONSchema(schema, { target: 'draft-2020-12', io: 'input' });
