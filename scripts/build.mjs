// Builds in the order of the arrows: the almanac's tables, then the apps that bundle what stands below them.
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { setup } from './setup.mjs';
import { mustNode, npm, root } from './steps.mjs';

/** Validates the almanac and writes its modules. A bad row ends the process. */
export function buildAlmanac() {
  mustNode('scripts/run.mjs', 'packages/almanac/scripts/build.ts');
}

function left(file) {
  if (!existsSync(`${root}${file}`)) throw new Error(`The build left no ${file}.`);
}

/** `apps/cli/dist/sorrel.mjs`. Needs the almanac. */
export async function buildCommandLine() {
  const { buildCli } = await import('../apps/cli/build.mjs');
  await buildCli();
  left('apps/cli/dist/sorrel.mjs');
}

/** `apps/web/dist/`, by the web app's own build. */
export function buildPages() {
  if (!existsSync(`${root}apps/web/package.json`)) return;
  if (npm('run', '--silent', 'build', '--workspace', 'apps/web') !== 0)
    throw new Error('The pages could not be built.');
  left('apps/web/dist/index.html');
}

/** `apps/server/dist/server.mjs`, which also serves the pages. */
export async function buildServing() {
  const { buildServer } = await import('../apps/server/build.mjs');
  await buildServer();
  left('apps/server/dist/server.mjs');
}

/** The almanac, then every app. */
export async function build() {
  buildAlmanac();
  await buildCommandLine();
  buildPages();
  await buildServing();
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  setup();
  await build();
}
