import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const dist = fileURLToPath(new URL('../dist/', import.meta.url));
const program = `${dist}torture-writer.mjs`;
const dayProgram = `${dist}torture-day-worker.mjs`;

/** Bundles the writer and the worker, so that two hundred of them start quickly. */
export async function buildWriter(): Promise<void> {
  await build({
    entryPoints: {
      'torture-writer': fileURLToPath(new URL('./writer.ts', import.meta.url)),
      'torture-day-worker': fileURLToPath(new URL('./day-worker.ts', import.meta.url)),
    },
    outdir: dist,
    outExtension: { '.js': '.mjs' },
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    external: ['better-sqlite3', 'pg', 'pg-native', 'pg-boss', 'kysely'],
    logLevel: 'error',
  });
}

export interface Victim {
  /** Resolves with the first acknowledged entry, or when the process ends without one. */
  readonly firstWord: Promise<void>;
  /** Resolves when the process is gone, with what it had acknowledged and why it stopped by itself, if it did. */
  readonly gone: Promise<{
    readonly entries: readonly number[];
    readonly photos: readonly string[];
    /** Codes of the samples whose plans it said it had stored. */
    readonly plans: readonly string[];
    readonly lost?: string;
  }>;
  /** SIGKILL: the process cannot finish anything. */
  kill(): void;
}

/** @param room the most a file may grow to, in kB; as much as the disk holds when left out */
export function startWriter(where: string, seed: number, from: number, room?: number): Victim {
  const command = [process.execPath, program, where, String(seed), String(from)];
  const limited = ['bash', '-c', `ulimit -f ${room}; exec "$0" "$@"`, ...command];
  return follow(room === undefined ? command : limited);
}

/** A program that plans the soil day in this store. */
export const startDayWorker = (where: string): Victim => follow([process.execPath, dayProgram, where]);

function follow([run = '', ...rest]: readonly string[]): Victim {
  const child = spawn(run, rest, { stdio: ['ignore', 'pipe', 'inherit'] });
  const entries: number[] = [];
  const photos: string[] = [];
  const plans: string[] = [];
  let lost: string | undefined;
  let unread = '';
  let speak: () => void = () => undefined;
  const firstWord = new Promise<void>((resolve) => {
    speak = resolve;
  });
  child.stdout.setEncoding('utf8');
  child.stdout.on('data', (text: string) => {
    unread += text;
    const lines = unread.split('\n');
    unread = lines.pop() ?? '';
    for (const line of lines) {
      const [word, said = ''] = line.split(' ');
      if (word === 'entry') entries.push(Number(said));
      else if (word === 'photo') photos.push(said);
      else if (word === 'plan') plans.push(said);
      else if (word === 'lost') lost = said;
    }
    speak();
  });
  const gone = new Promise<Awaited<Victim['gone']>>((resolve) => {
    child.on('close', (code, signal) => {
      speak();
      if (signal !== 'SIGKILL' && lost === undefined) lost = `ended by itself with ${code ?? signal}`;
      resolve({ entries, photos, plans, ...(lost === undefined ? {} : { lost }) });
    });
  });
  return { firstWord, gone, kill: () => child.kill('SIGKILL') };
}
