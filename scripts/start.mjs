// Sorrel on this computer: installs what is missing, builds, and serves the invented gardens until Ctrl-C.
// With `--plan` it prints the plans of these gardens instead.
import { readdirSync } from 'node:fs';
import { build, buildAlmanac, buildCommandLine } from './build.mjs';
import { setup } from './setup.mjs';
import { mustNode, root } from './steps.mjs';

setup();
if (process.argv.includes('--plan')) {
  buildAlmanac();
  await buildCommandLine();
  for (const garden of readdirSync(`${root}demo`).filter((file) => /\.ya?ml$/.test(file))) {
    console.log(`\n$ sorrel plan demo/${garden}\n`);
    mustNode('apps/cli/dist/sorrel.mjs', 'plan', `demo/${garden}`);
  }
} else {
  await build();
  // The terminal is for the person; the log line of every request is for those who run a server.
  process.env.SORREL_LOG ??= 'warn';
  // In this same process, so that Ctrl-C and a signal to npm reach the server itself.
  await import('../apps/server/dist/server.mjs');
}
