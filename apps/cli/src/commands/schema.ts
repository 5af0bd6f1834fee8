import {
  accountReportJsonSchema,
  comparisonReportJsonSchema,
  forecastReportJsonSchema,
  gardenJsonSchema,
  learnedReportJsonSchema,
  planReportJsonSchema,
  usableReportJsonSchema,
} from '@sorrel/engine/document';
import { senderMappingJsonSchema } from '@sorrel/intake/mapping';
import { exit, Stop } from '../exit.ts';
import { read } from '../options.ts';
import { words } from '../words.ts';

const schemas: Readonly<Record<string, () => unknown>> = {
  garden: gardenJsonSchema,
  plan: planReportJsonSchema,
  forecast: forecastReportJsonSchema,
  account: accountReportJsonSchema,
  learned: learnedReportJsonSchema,
  compare: comparisonReportJsonSchema,
  sender: senderMappingJsonSchema,
  usable: usableReportJsonSchema,
};

/** `sorrel schema [NAME]`: the JSON Schema of what goes in, or of what `--json` puts out. */
export function run(args: readonly string[]): number {
  const { positionals } = read(args, { help: { type: 'boolean' } }, 'schema');
  const [name = 'garden'] = positionals;
  const schema = Object.hasOwn(schemas, name) ? schemas[name] : undefined;
  if (schema === undefined)
    throw new Stop(exit.usage, words.usage('schema', words.noSchema(name, Object.keys(schemas))));
  process.stdout.write(`${JSON.stringify(schema(), null, 2)}\n`);
  return exit.fine;
}
