// Writes the published JSON Schemas: node scripts/run.mjs scripts/schemas.ts; then npx biome format --write docs
import { writeFileSync } from 'node:fs';
import {
  accountReportJsonSchema,
  comparisonReportJsonSchema,
  forecastReportJsonSchema,
  gardenJsonSchema,
  learnedReportJsonSchema,
  planReportJsonSchema,
  usableReportJsonSchema,
} from '../packages/engine/src/document/json-schema.ts';
import { senderMappingJsonSchema } from '../packages/intake/src/mapping/schema.ts';
import { gardenExportJsonSchema } from '../packages/store/src/transfer/garden-export.ts';

/** Every published schema, by its file in docs/. */
export const schemas = {
  'garden-document.schema.json': gardenJsonSchema,
  'garden-export.schema.json': gardenExportJsonSchema,
  'sender-mapping.schema.json': senderMappingJsonSchema,
  'plan-report.schema.json': planReportJsonSchema,
  'forecast-report.schema.json': forecastReportJsonSchema,
  'account-report.schema.json': accountReportJsonSchema,
  'learned-report.schema.json': learnedReportJsonSchema,
  'comparison-report.schema.json': comparisonReportJsonSchema,
  'usable-report.schema.json': usableReportJsonSchema,
} as const;

if (process.argv[1]?.endsWith('schemas.ts'))
  for (const [file, schema] of Object.entries(schemas))
    writeFileSync(new URL(`../docs/${file}`, import.meta.url), `${JSON.stringify(schema(), null, 2)}\n`);
