import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const program = fileURLToPath(new URL('../dist/torture-writer.mjs', import.meta.url));

/** Bundles the writer, so that two hundred of them start quickly. */
export async function buildWriter(): Promise<void> {
  await build({
    entryPoints: [fileURLToPath(new URL('./writer.ts', import.meta.url))],
    outfile: program,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    external: ['better-sqlite3', 'pg', 'pg-native', 'kysely'],
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
    readonly lost?: string;
  }>;
  /** SIGKILL: the process cannot finish anything. */
  kill(): void;
}

/** @param room the most a file may grow to, in kB; as much as the disk holds when left out */
export function startWriter(where: string, seed: number, from: number, room?: number): Victim {
  const command = [process.execPath, program, where, String(seed), String(from)];
  const limited = ['bash', '-c', `ulimit -f ${room}; exec "$0" "$@"`, ...command];
  const [run = '', ...rest] = room === undefined ? command : limited;
  const child = spawn(run, rest, { stdio: ['ignore', 'pipe', 'inherit'] });
  const entries: number[] = [];
  const photos: string[] = [];
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
      else lost = said;
    }
    speak();
  });
  const gone = new Promise<Awaited<Victim['gone']>>((resolve) => {
    child.on('close', (code, signal) => {
      speak();
      if (signal !== 'SIGKILL' && lost === undefined) lost = `ended by itself with ${code ?? signal}`;
      resolve({ entries, photos, ...(lost === undefined ? {} : { lost }) });
    });
  });
  return { firstWord, gone, kill: () => child.kill('SIGKILL') };
}
