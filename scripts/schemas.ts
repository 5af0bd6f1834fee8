// Writes the published JSON Schemas: node scripts/run.mjs scripts/schemas.ts; then npx biome format --write docs
import { writeFileSync } from 'node:fs';
import { gardenJsonSchema, planReportJsonSchema } from '../packages/engine/src/document/json-schema.ts';

/** Every published schema, by its file in docs/. */
export const schemas = {
  'garden-document.schema.json': gardenJsonSchema,
  'plan-report.schema.json': planReportJsonSchema,
} as const;

if (process.argv[1]?.endsWith('schemas.ts'))
  for (const [file, schema] of Object.entries(schemas))
    writeFileSync(new URL(`../docs/${file}`, import.meta.url), `${JSON.stringify(schema(), null, 2)}\n`);
