// Writes a table of invented soil tests: node scripts/run.mjs benc./soil-tests.ts FILE ROWS [SEED]
import { writeTests } from './soil-tests.ts';

const [file, count, seed = '1'] = process.argv.slice(2);
if (!file || !(Number(count) > 0)) {
  console.error('usage: node scripts/run.mjs benc./soil-tests.ts FILE ROWS [SEED]');
  process.exit(64);
}
writeTests(file, Number(count), Number(seed));
