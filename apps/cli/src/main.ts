#!/usr/bin/env node
import { exit, Stop } from './exit.ts';
import { help } from './help.ts';
import { words } from './words.ts';

type Command = { run(args: readonly string[]): Promise<number> | number };

/** Each command is a file of its own, loaded only when it is asked for, so that a short answer starts quickly. */
const commands: Readonly<Record<string, () => Promise<Command>>> = {
  plan: () => import('./commands/plan.ts'),
  bed: () => import('./commands/bed.ts'),
  table: () => import('./commands/table.ts'),
  intake: () => import('./commands/intake.ts'),
  day: () => import('./commands/day.ts'),
  forecast: () => import('./commands/forecast.ts'),
  account: () => import('./commands/account.ts'),
  learned: () => import('./commands/learned.ts'),
  compare: () => import('./commands/compare.ts'),
  arrange: () => import('./commands/arrange.ts'),
  usable: () => import('./commands/usable.ts'),
  leaves: () => import('./commands/leaves.ts'),
  weeds: () => import('./commands/weeds.ts'),
  check: () => import('./commands/check.ts'),
  plants: () => import('./commands/plants.ts'),
  materials: () => import('./commands/materials.ts'),
  methods: () => import('./commands/methods.ts'),
  cite: () => import('./commands/cite.ts'),
  schema: () => import('./commands/schema.ts'),
  gardens: () => import('./commands/gardens.ts'),
  import: () => import('./commands/import.ts'),
  export: () => import('./commands/export.ts'),
};

async function main(args: readonly string[]): Promise<number> {
  const [name, ...rest] = args;
  if (name === undefined || name === '--help' || name === '-h' || name === 'help') {
    const about = name === 'help' && rest[0] !== undefined ? help[rest[0]] : undefined;
    process.stdout.write(about ?? help.all ?? '');
    return name === undefined ? exit.usage : exit.fine;
  }
  if (name === '--version') {
    process.stdout.write(`${process.env.SORREL_VERSION ?? ''}\n`);
    return exit.fine;
  }
  const load = Object.hasOwn(commands, name) ? commands[name] : undefined;
  if (load === undefined) throw new Stop(exit.usage, words.noCommand(name, Object.keys(commands)));
  if (rest.includes('--help') || rest.includes('-h')) {
    process.stdout.write(help[name] ?? '');
    return exit.fine;
  }
  return (await load()).run(rest);
}

// A reader that stops early, such as `head`, is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(exit.fine);
  throw error;
});

try {
  process.exitCode = await main(process.argv.slice(2));
} catch (error) {
  if (!(error instanceof Stop)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = error.code;
}
