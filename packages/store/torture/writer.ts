import { writeSync } from 'node:fs';
import { openStore } from '../src/index.ts';
import { entryOf, partFrom, photoOf } from './work.ts';

// Writes without end and says each thing that was acknowledged, straight to the pipe, until somebody ends it.
const [where = '', seed = 0, from = 0] = process.argv
  .slice(2)
  .map((each, index) => (index === 0 ? each : Number(each)));
// At a file size limit the system also signals; the failed write is what counts.
process.on('SIGXFSZ', () => undefined);
const say = (line: string) => writeSync(1, `${line}\n`);

async function write(place: string, seedNumber: number, start: number): Promise<void> {
  const opened = await openStore(place);
  if (!opened.ok) return lost(opened.problems[0]?.code);
  let number = start;
  for (;;) {
    const part = partFrom(seedNumber, number);
    const stored = await opened.value.append(part.map((each) => entryOf(seedNumber, each)));
    if (!stored.ok) return lost(stored.problems[0]?.code);
    for (const each of part) say(`entry ${each}`);
    number += part.length;
    if (number % 5 !== 0) continue;
    const photo = await opened.value.putPhoto('image/png', photoOf(seedNumber, number));
    if (!photo.ok) return lost(photo.problems[0]?.code);
    say(`photo ${photo.value.hash}`);
  }
}

function lost(code = 'unknown'): void {
  say(`lost ${code}`);
  process.exit(3);
}

await write(String(where), Number(seed), Number(from));
