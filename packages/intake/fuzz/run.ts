// Feeds mutated tables to the intake until so many rows went in: npm run fuzz [-- ROWS [SEED]]
import { account } from './account.ts';

const [wanted = '1000000', first = '1'] = process.argv.slice(2);
const ROWS_A_TABLE = 250;
/** A table of this size that takes longer hangs. */
const MOST_MS = 20_000;

let [rows, planned, attention, tables, refused, slowest] = [0, 0, 0, 0, 0, 0];
const started = performance.now();
for (let seed = Number(first); rows < Number(wanted); seed++) {
  const begun = performance.now();
  const found = await account(seed, ROWS_A_TABLE);
  const took = performance.now() - begun;
  if (took > MOST_MS) throw new Error(`seed ${seed} took ${Math.round(took)} ms`);
  slowest = Math.max(slowest, took);
  tables += 1;
  if (found.refused) refused += 1;
  rows += found.rows;
  planned += found.planned;
  attention += found.attention;
  if (tables % 200 === 0) console.log(`${rows} rows, ${planned} planned, ${attention} to mend`);
}
const seconds = (performance.now() - started) / 1000;
console.log(
  `${tables} tables, ${rows} rows: ${planned} planned, ${attention} to mend, ${rows - planned - attention} lost; ` +
    `${refused} tables refused; slowest table ${Math.round(slowest)} ms; ${Math.round(seconds)} s`,
);
process.exitCode = rows === planned + attention ? 0 : 1;
