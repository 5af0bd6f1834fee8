import { type ParseArgsConfig, parseArgs } from 'node:util';
import { exit, Stop } from './exit.ts';
import { words } from './words.ts';

type Options = NonNullable<ParseArgsConfig['options']>;

/** Options every command that shows figures takes. */
export const showing = {
  units: { type: 'string' },
  json: { type: 'boolean' },
  ascii: { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
} as const satisfies Options;

/** Arguments of a command; an unknown option ends with the usage code and the nearest help. */
export function read<const O extends Options>(args: readonly string[], options: O, command: string) {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
  } catch (error) {
    throw new Stop(exit.usage, words.usage(command, error instanceof Error ? error.message : String(error)));
  }
}

/** `--why=FIGURE` asks for one figure and `--why` for all of them. */
export function splitWhy(args: readonly string[]): string[] {
  return args.flatMap((arg) => (arg.startsWith('--why=') ? ['--why', '--figure', arg.slice('--why='.length)] : [arg]));
}

/** Checks `--units`; `undefined` when the person did not say. */
export function unitsOf(text: string | undefined, command: string): 'metric' | 'us' | undefined {
  if (text === undefined || text === 'metric' || text === 'us') return text;
  throw new Stop(exit.usage, words.usage(command, words.notUnits(text)));
}

/** Checks `--as-of`; today by the clock of this computer when the person did not say. */
export function todayOf(text: string | undefined, command: string): string {
  if (text === undefined) {
    const now = new Date();
    const two = (value: number) => String(value).padStart(2, '0');
    return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  }
  const day = /^\d{4}-\d{2}-\d{2}$/.test(text) ? new Date(`${text}T00:00:00Z`) : undefined;
  if (day === undefined || Number.isNaN(day.getTime()) || day.toISOString().slice(0, 10) !== text)
    throw new Stop(exit.usage, words.usage(command, words.notDay(text)));
  return text;
}

/** The one file a command works on. */
export function oneFile(files: readonly string[], command: string): string {
  const [file, extra] = files;
  if (file === undefined) throw new Stop(exit.usage, words.usage(command, words.noFile));
  if (extra !== undefined) throw new Stop(exit.usage, words.usage(command, words.oneFileOnly(extra)));
  return file;
}
