import { writeFileSync } from 'node:fs';
import type { UnitSystem } from '@sorrel/engine/units';
import { exit, Stop } from './exit.ts';
import { nameOf, reasonOf } from './input.ts';
import { nutrientWords } from './nutrients-words.ts';
import { todayOf } from './options.ts';
import { words } from './words.ts';

/** How a paper is printed for this person, today. */
export const paperOptions = ({ system }: { readonly system: UnitSystem }) => ({
  system,
  printed: todayOf(undefined, 'print'),
});

/** Writes a picture or a PDF and says so beside the answer. */
export function writePaper(file: string, content: string | Uint8Array): void {
  try {
    writeFileSync(file, content);
  } catch (error) {
    throw new Stop(exit.nothing, words.cannotWrite(nameOf(file), reasonOf(error)));
  }
  process.stderr.write(`${nutrientWords.drawn(file)}\n`);
}
