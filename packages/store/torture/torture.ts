import { parseArgs } from 'node:util';
import { torture } from './rounds.ts';
import { makeTargets } from './targets.ts';
import { buildWriter } from './victim.ts';

// npm run torture -- --times 200 --seed 1
const { values } = parseArgs({
  options: { times: { type: 'string', default: '200' }, seed: { type: 'string', default: '1' } },
});
const times = Number(values.times);
const seed = Number(values.seed);
if (!Number.isInteger(times) || times < 1 || !Number.isInteger(seed)) {
  console.error('Usage: npm run torture -- [--times N] [--seed N]');
  process.exit(2);
}

await buildWriter();
const { targets, stop } = await makeTargets();
let failed = false;
try {
  for (const [index, target] of targets.entries()) {
    const { kills, acknowledged, early, faults } = await torture(target, times, seed + index, console.log);
    console.log(
      `${target.name}: ${kills} kills, ${acknowledged} entries acknowledged, ${early} kills before the first of them, ${faults.length} faults`,
    );
    for (const fault of faults) console.log(`  ${fault}`);
    failed ||= faults.length > 0 || acknowledged === 0;
  }
} finally {
  await stop();
}
process.exitCode = failed ? 1 : 0;
