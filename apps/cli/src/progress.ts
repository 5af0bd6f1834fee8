import { words } from './words.ts';

/** What progress is told to: the terminal's error stream, or a stand-in. */
export interface Teller {
  readonly isTTY?: boolean | undefined;
  write(text: string): unknown;
}

/** Work that takes no longer than this is not spoken of. */
const QUIET_MS = 1000;

/**
 * Says how far long work has come, on one line that is wiped at the end. Nothing is said when nobody watches: a log is no
 * place for it.
 */
export function progress(total: number, teller: Teller = process.stderr, now: () => number = () => performance.now()) {
  const start = now();
  let said = 0;
  return {
    at(done: number): void {
      if (!teller.isTTY || now() - start < QUIET_MS) return;
      const text = words.progress(done, total);
      teller.write(`\r${text.padEnd(said)}`);
      said = text.length;
    },
    end(): void {
      if (said > 0) teller.write(`\r${' '.repeat(said)}\r`);
    },
  };
}
