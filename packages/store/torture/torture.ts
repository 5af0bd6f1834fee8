import { parseArgs } from 'node:util';
import { tortureDay } from './day-rounds.ts';
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
  for (const [name, programs] of [
    ['SQLite, writer killed', 1],
    ['PostgreSQL, writer killed', 2],
  ] as const) {
    const target = targets.find((each) => each.name === name);
    if (target === undefined) throw new RangeError(name);
    const total = { kills: 0, told: 0, faults: [] as string[] };
    for (let round = 0; total.kills < times && round < times; round++) {
      const day = await tortureDay(target, { samples: 300, programs, kills: 20, seed: seed + 100 + round });
      total.kills += day.kills;
      total.told += day.told;
      total.faults.push(...day.faults);
    }
    console.log(`Soil days, ${name}: ${total.kills} kills, ${total.told} plans told of, ${total.faults.length} faults`);
    for (const fault of total.faults) console.log(`  ${fault}`);
    failed ||= total.faults.length > 0 || total.told === 0;
  }
} finally {
  await stop();
}
process.exitCode = failed ? 1 : 0;
