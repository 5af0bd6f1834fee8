// Runs everything that proves Sorrel right, cheapest first. Every step runs even when an earlier one failed;
// the last lines are the test runner's own totals.
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { build } from './build.mjs';
import { setup } from './setup.mjs';
import { node, root } from './steps.mjs';

setup();
await build();

const failed = [];
function step(title, file, ...args) {
  console.log(`\n== ${title}`);
  if (node(file, ...args) !== 0) failed.push(title);
}

step('Style and the direction of the arrows', 'node_modules/@biomejs/biome/bin/biome', 'check', '.');
step('Types', 'node_modules/typescript/bin/tsc', '-p', 'tsconfig.json');
step('Types of the pages', 'node_modules/typescript/bin/tsc', '-p', 'apps/web');
step('Published checks', 'scripts/run.mjs', 'checks/run.ts', '--no-write');

const report = `${root}.cache/tests.json`;
mkdirSync(`${root}.cache`, { recursive: true });
rmSync(report, { force: true });
step(
  'Tests',
  'node_modules/vitest/vitest.mjs',
  'run',
  '--reporter=default',
  '--reporter=json',
  `--outputFile.json=${report}`,
);

if (failed.length > 0) console.log(`\nFailed: ${failed.join('; ')}.`);
const totals = JSON.parse(readFileSync(report, 'utf8'));
// A test file that could not even be loaded holds no tests, so the runner does not count it among the failed ones.
const unloaded = totals.testResults.filter((file) => file.status === 'failed' && file.assertionResults.length === 0);
for (const file of unloaded) console.log(`Could not be run: ${file.name}`);
const skipped = totals.numPendingTests + totals.numTodoTests;
console.log(`${totals.numPassedTests} passed, ${totals.numFailedTests + unloaded.length} failed, ${skipped} skipped`);
process.exitCode = failed.length > 0 ? 1 : 0;
