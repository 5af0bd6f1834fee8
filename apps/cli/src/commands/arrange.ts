import { readFileSync, writeFileSync } from 'node:fs';
import type { Message } from '@sorrel/engine/derivation';
import { readWishes } from '@sorrel/engine/document';
import { type Arrangement, arrange, highsSolver } from '@sorrel/engine/placing';
import { arrangeText } from '../arrange-text.ts';
import { derivationText } from '../derivation-text.ts';
import { exit, Stop } from '../exit.ts';
import { gardenFor, gardenOptions } from '../garden-input.ts';
import { readDocument } from '../input.ts';
import { read, splitWhy } from '../options.ts';
import { placingWords as own } from '../placing-words.ts';
import { choicesText, problemsText } from '../problems-text.ts';
import { day, toAscii } from '../speak.ts';
import { words } from '../words.ts';

const { place: _, ...shared } = gardenOptions;
const options = {
  ...shared,
  wishes: { type: 'string' },
  seasons: { type: 'string' },
  seconds: { type: 'string' },
  pdf: { type: 'string' },
} as const;
/** Long enough for gardens of sixty places; after that the best found is told, and that it is not proven. */
const SECONDS = 120;

/** `sorrel arrange GARDEN --wishes FILE`: which plants in which places, so that the least soil has to be moved. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, positionals } = read(splitWhy(args), options, 'arrange');
  if (values.wishes === undefined) throw new Stop(exit.usage, words.usage('arrange', own.noWishes));
  const seconds = Number(values.seconds ?? SECONDS);
  if (!(seconds > 0))
    throw new Stop(
      exit.usage,
      words.usage('arrange', words.notChoice('seconds', values.seconds ?? '', 'a number above 0')),
    );
  const { read: found, speaker } = await gardenFor(values, positionals, 'arrange');
  const typed = await readDocument(values.wishes);
  const wished = readWishes(withSeasons(typed, values.seasons), found.garden.places);
  const problems = [...found.problems, ...wished.problems];
  const { places, products, settings, currencySymbol, name } = found.garden;
  const asked =
    wished.wishes.length +
    wished.rules.reduce((sum, { stays = [], fixed = [] }) => sum + stays.length + fixed.length, 0);
  if (places.length === 0 || asked === 0) {
    if (problems.length > 0) process.stderr.write(`${problemsText(problems, found.skipped)}\n`);
    process.stderr.write(`${places.length === 0 ? words.nothingUsable : own.nothingWished}\n`);
    return exit.nothing;
  }
  const { default: loadHighs } = await import('highs');
  const { wishes, rules, seasons } = wished;
  const wasmBinary = readFileSync(new URL('highs.wasm', import.meta.url));
  const solver = highsSolver(await loadHighs({ wasmBinary }), seconds);
  const result = arrange({ places, products, settings, wishes, rules, seasons }, solver, {
    explain: values.why === true,
  });
  if (values.pdf !== undefined) {
    const { arrangementSheet } = await import('@sorrel/print');
    const paper = { system: speaker.system, printed: settings.today, garden: name, currencySymbol };
    writeFileSync(values.pdf, arrangementSheet(result, paper));
    process.stderr.write(`${own.wrote(values.pdf)}\n`);
  }
  const code = problems.length > 0 ? exit.partly : exit.fine;
  if (values.json) {
    process.stdout.write(
      `${JSON.stringify({ garden: name, asOf: settings.today, ...said(result, speaker.say), problems, choices: found.choices }, null, 2)}\n`,
    );
    return code;
  }
  if (problems.length > 0) process.stderr.write(`${problemsText(problems, found.skipped)}\n`);
  const parts = [`${name}\n${own.title}, ${day(settings.today)}`, arrangeText(result, currencySymbol, speaker)];
  if (result.derivation !== undefined) {
    parts.push(`${words.why}\n\n${derivationText(result.derivation, values.figure)}`);
    parts.push((await import('../sources-text.ts')).sourcesText([result.derivation]));
  }
  const taken = choicesText(found.choices, speaker);
  if (taken !== '') parts.push(taken);
  const page = `${parts.join('\n\n')}\n`;
  process.stdout.write(speaker.unicode ? page : toAscii(page));
  return code;
}

/** `--seasons` goes before what the file says; anything that is no whole number is reported with the file. */
function withSeasons(typed: unknown, seasons: string | undefined): unknown {
  if (seasons === undefined || typeof typed !== 'object' || typed === null || Array.isArray(typed)) return typed;
  return { ...typed, seasons: /^\d+$/.test(seasons) ? Number(seasons) : seasons };
}

/** Messages with their sentences, so that a machine that only passes them on needs no catalogue. */
function said(result: Arrangement, say: (message: Message) => string): object {
  const { places, ...rest } = result;
  const slim = (list: Arrangement['places']) =>
    list.map(({ move, ...place }) => ({
      ...place,
      ...(move === undefined ? {} : { move: { ...move, product: move.product?.name } }),
    }));
  const whole = {
    ...rest,
    places: slim(places),
    ...(rest.runnerUp === undefined ? {} : { runnerUp: { ...rest.runnerUp, places: slim(rest.runnerUp.places) } }),
  };
  return JSON.parse(JSON.stringify(whole), (_key, value: unknown) =>
    isMessage(value) ? { ...value, text: say(value) } : value,
  );
}

/** A code names its room before a dot. */
const isMessage = (value: unknown): value is Message =>
  typeof value === 'object' && value !== null && 'code' in value && /^[a-z]+\./.test(String(value.code));
