import { exit, Stop } from './exit.ts';
import { timeWords } from './time-words.ts';
import { words } from './words.ts';

/** Options of the commands that look ahead. */
export const aheadOptions = { years: { type: 'string' }, without: { type: 'boolean' } } as const;

const USUAL = 3;

/** Years to look ahead, 1 to 5. */
export function yearsOf(text: string | undefined, command: string): number {
  if (text === undefined) return USUAL;
  const years = Number(text);
  if (text.trim() !== '' && years >= 1 && years <= 5) return years;
  throw new Stop(exit.usage, words.usage(command, timeWords.notYears(text)));
}
