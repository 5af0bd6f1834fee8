import { writeFileSync } from 'node:fs';
import { summaryOf } from '@sorrel/engine/day';
import { readGarden, readSamples } from '@sorrel/engine/document';
import { planGarden } from '@sorrel/engine/plan';
import type { DayOptions, DaySample } from '@sorrel/print';
import { dayWords as own } from '../day-words.ts';
import { exit, Stop } from '../exit.ts';
import { documentOf } from '../garden-input.ts';
import { read, todayOf, unitsOf } from '../options.ts';
import { problemsText } from '../problems-text.ts';
import { progress } from '../progress.ts';
import { recordOptions } from '../record.ts';
import { words } from '../words.ts';

const options = {
  ...recordOptions,
  units: { type: 'string' },
  'as-of': { type: 'string' },
  handouts: { type: 'string' },
  merge: { type: 'string' },
  summary: { type: 'string' },
  anonymous: { type: 'string' },
  contact: { type: 'string' },
  'large-print': { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
} as const;

/** `sorrel day GARDEN --handouts FILE ...`: every sample of a soil day planned, and a page for each person. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, positionals } = read(args, options, 'day');
  const { handouts: pages, merge, summary, anonymous } = values;
  const asked = values['as-of'];
  const today = todayOf(asked, 'day');
  const units = unitsOf(values.units, 'day');
  const document = await documentOf(positionals, values.store, values.garden, 'day');
  const found = readGarden(document, { today, ...(asked === undefined ? {} : { asOf: asked }) });
  const sampled = readSamples(document, found.garden.places);
  if (found.problems.length > 0) process.stderr.write(`${problemsText(found.problems, found.skipped)}\n`);
  if (sampled.length === 0) {
    process.stderr.write(`${own.noSamples}\n`);
    return exit.nothing;
  }
  const telling = progress(sampled.length);
  const samples = sampled.flatMap(({ place, ...sample }, index): DaySample[] => {
    // Each on its own: people do not share one stock.
    const [plan] = planGarden({ ...found.garden, places: [place] }, { explain: true, forecast: true }).recommendations;
    telling.at(index + 1);
    return plan === undefined ? [] : [{ ...sample, place, plan }];
  });
  telling.end();

  const print = await import('@sorrel/print');
  const paper: DayOptions = {
    system: units ?? found.units ?? 'metric',
    printed: todayOf(undefined, 'day'),
    planned: found.garden.settings.today,
    title: found.garden.name,
    largePrint: values['large-print'] === true,
  };
  const personal = () =>
    samples.map(({ code, person, place, plan }) => ({
      place,
      recommendation: plan,
      garden: found.garden.name,
      sampleId: code,
      ...(person === undefined ? {} : { person }),
      ...(values.contact === undefined ? {} : { contact: values.contact }),
    }));
  write(pages, () => print.handouts(personal(), paper));
  write(merge, () => print.mergeTable(samples, paper));
  write(summary, () => print.daySummary(samples, paper));
  write(anonymous, () => print.anonymousTable(samples));

  const told = summaryOf(samples);
  const said = print.summaryWords(samples, told, paper);
  const lines = [
    own.planned(samples.length),
    ...told.decisions.map(({ count }, index) => own.counted(count, said.decisions[index] ?? '')),
    ...said.calls.map(({ code, person, why }) => own.call(code, person ?? '', why.join(' '))),
  ];
  process.stdout.write(`${lines.join('\n')}\n`);
  return found.problems.length > 0 ? exit.partly : exit.fine;
}

function write(file: string | undefined, make: () => string | Uint8Array): void {
  if (file === undefined) return;
  try {
    writeFileSync(file, make());
  } catch (error) {
    const code = (error as { readonly code?: unknown }).code;
    if (code === undefined) throw error;
    throw new Stop(exit.nothing, words.cannotWrite(file, String(code)));
  }
  process.stderr.write(`${own.wrote(file)}\n`);
}
