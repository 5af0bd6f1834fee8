import { writeSync } from 'node:fs';
import { setTimeout } from 'node:timers/promises';
import { openStore } from '../src/index.ts';

// Plans the samples of whatever soil day is in the store, and says each plan that was stored, until somebody ends it.
const [where = ''] = process.argv.slice(2);
const opened = await openStore(where, { patience: 2 });
if (!opened.ok) {
  writeSync(1, `lost ${opened.problems[0]?.code}\n`);
  process.exit(3);
}
opened.value.days.work(
  async ({ code }) => {
    await setTimeout(1 + Math.random() * 8);
    return { source: `of ${code}`, body: `plan of ${code} `.repeat(400) };
  },
  {
    most: 3,
    pause: 20,
    told: ({ code }, came) => writeSync(1, `${came === 'done' ? 'plan' : came} ${code}\n`),
  },
);
// What waits is no reason to stay, so something must be.
setInterval(() => undefined, 1000);
