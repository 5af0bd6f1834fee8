// Runs everything that proves Sorrel right, cheapest first. Every step runs even when an earlier one failed;
// the last lines are the test runner's own totals.
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { browser } from './browser.mjs';
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

/** Runs a set of tests and reads the runner's own totals. */
function tests(title, name, ...args) {
  const report = `${root}.cache/${name}.json`;
  rmSync(report, { force: true });
  step(
    title,
    'node_modules/vitest/vitest.mjs',
    'run',
    ...args,
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
  );
  if (!existsSync(report)) return { passed: 0, failed: 1, skipped: 0 };
  const totals = JSON.parse(readFileSync(report, 'utf8'));
  // A test file that could not even be loaded holds no tests, so the runner does not count it among the failed ones.
  const unloaded = totals.testResults.filter((file) => file.status === 'failed' && file.assertionResults.length === 0);
  for (const file of unloaded) console.log(`Could not be run: ${file.name}`);
  return {
    passed: totals.numPassedTests,
    failed: totals.numFailedTests + unloaded.length,
    skipped: totals.numPendingTests + totals.numTodoTests,
  };
}

mkdirSync(`${root}.cache`, { recursive: true });
const chromium = await browser();
if (chromium !== undefined) process.env.CHROMIUM = chromium;
const sets = [
  tests('Tests', 'tests'),
  tests('Journeys in a browser', 'journeys', '--config', 'apps/web/e2e/vitest.config.ts'),
];

if (failed.length > 0) console.log(`\nFailed: ${failed.join('; ')}.`);
const sum = (key) => sets.reduce((total, one) => total + one[key], 0);
console.log(`${sum('passed')} passed, ${sum('failed')} failed, ${sum('skipped')} skipped`);
process.exitCode = failed.length > 0 ? 1 : 0;
