// Loaded before the program whose memory is measured; writes its peak when it ends. Plain JavaScript, because it runs
// inside the bundled command, which knows no TypeScript.
import { writeFileSync } from 'node:fs';
import { isMainThread } from 'node:worker_threads';

let heap = 0;
const sample = setInterval(() => {
  heap = Math.max(heap, process.memoryUsage().heapUsed);
}, 20);
sample.unref();
// Memory is counted for the whole process; its threads load this file too.
if (isMainThread)
  process.on('exit', () => {
    const resident = process.resourceUsage().maxRSS * 1024;
    writeFileSync(
      process.env.SORREL_PEAK,
      JSON.stringify({ resident, heap: Math.max(heap, process.memoryUsage().heapUsed) }),
    );
  });
