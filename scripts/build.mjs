// Builds in the order of the arrows: the almanac's tables, then the command line that bundles them.
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { setup } from './setup.mjs';
import { mustNode, root } from './steps.mjs';

/** Validates the almanac and writes its modules. A bad row ends the process. */
export function buildAlmanac() {
  mustNode('scripts/run.mjs', 'packages/almanac/scripts/build.ts');
}

/** The almanac, then `apps/cli/dist/sorrel.mjs`. */
export async function build() {
  buildAlmanac();
  const { buildCli } = await import('../apps/cli/build.mjs');
  await buildCli();
  if (!existsSync(`${root}apps/cli/dist/sorrel.mjs`)) throw new Error('The build left no apps/cli/dist/sorrel.mjs.');
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  setup();
  await build();
}
