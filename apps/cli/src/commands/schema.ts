import { gardenJsonSchema } from '@sorrel/engine/document';
import { exit } from '../exit.ts';
import { read } from '../options.ts';

/** `sorrel schema`: the JSON Schema of the garden document. */
export function run(args: readonly string[]): number {
  read(args, { help: { type: 'boolean' } }, 'schema');
  process.stdout.write(`${JSON.stringify(gardenJsonSchema(), null, 2)}\n`);
  return exit.fine;
}
