// The main job on the demo gardens: from soil tests to a plan, with nothing installed by hand beforehand.
import { readdirSync } from 'node:fs';
import { build } from './build.mjs';
import { setup } from './setup.mjs';
import { mustNode, root } from './steps.mjs';

setup();
await build();
for (const garden of readdirSync(`${root}demo`).filter((file) => /\.ya?ml$/.test(file))) {
  console.log(`\n$ sorrel plan demo/${garden}\n`);
  mustNode('apps/cli/dist/sorrel.mjs', 'plan', `demo/${garden}`);
}
