import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { type SenderMapping, senderMapping } from '@sorrel/intake';
import { exit, Stop } from '../exit.ts';
import { reasonOf } from '../input.ts';
import { intakeWords } from '../intake-words.ts';
import { words } from '../words.ts';

/** What is remembered of a sender; `undefined` when there is no such file yet. */
export function readSender(file: string | undefined): SenderMapping | undefined {
  if (file === undefined || !existsSync(file)) return undefined;
  try {
    const checked = senderMapping.safeParse(JSON.parse(readFileSync(file, 'utf8')));
    if (checked.success) return checked.data;
    const [issue] = checked.error.issues;
    throw new Stop(exit.nothing, intakeWords.badSender(file, `${issue?.path.join('.')}: ${issue?.message}`));
  } catch (error) {
    if (error instanceof Stop) throw error;
    throw new Stop(exit.nothing, intakeWords.badSender(file, reasonOf(error)));
  }
}

/** Keeps how a sender writes. */
export function keepSender(file: string, mapping: SenderMapping): void {
  try {
    writeFileSync(file, `${JSON.stringify(mapping, null, 2)}\n`);
  } catch (error) {
    throw new Stop(exit.nothing, words.cannotWrite(file, reasonOf(error)));
  }
}
