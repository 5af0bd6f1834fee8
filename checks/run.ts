// Runs the published checks. Without arguments: the shipped cases, and writes docs/published-checks.md
// (`--no-write` leaves the page alone). With files: those instead, and only prints.
// Exits 0 when everything was read and run, misses or not; 2 when a file cannot be read.
import { writeFileSync } from 'node:fs';
import { adapters } from './adapters/index.ts';
import { closingLine, tally } from './judge.ts';
import { reportPage, reportText } from './report.ts';
import { readReasons, runFile, shippedFiles } from './shipped.ts';

const args = process.argv.slice(2);
const files = args.filter((arg) => !arg.startsWith('--'));
const reasons = readReasons();
const results = [];
for (const file of files.length > 0 ? files : shippedFiles) {
  try {
    const result = runFile(file, adapters);
    results.push(result);
    console.log(reportText(result, files.length > 0 ? new Map() : reasons));
  } catch (error) {
    console.error(`\n${file} cannot be read: ${(error as Error).message}`);
    process.exitCode = 2;
  }
}
const silent = results.flatMap(({ outcomes }) => outcomes.filter(({ state }) => state === 'not computable'));
if (silent.length > 0) {
  console.log('\nNo way to compute:');
  for (const { check } of silent) console.log(`  ${check.id}  ${check.title}  ${JSON.stringify(check.inputs)}`);
}
const unusable = results.reduce((count, { bad }) => count + bad.length, 0);
if (unusable > 0) console.log(`\nRows that could not be used: ${unusable} (listed above by line)`);
if (files.length === 0 && !args.includes('--no-write'))
  writeFileSync(new URL('../docs/published-checks.md', import.meta.url), reportPage(results, reasons));
console.log(`\n${closingLine(tally(results.flatMap(({ outcomes }) => outcomes)))}`);
