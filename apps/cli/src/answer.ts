import type { Derivation } from '@sorrel/engine/derivation';
import type { ReadGarden } from '@sorrel/engine/document';
import type { Place } from '@sorrel/engine/plan';
import { derivationText } from './derivation-text.ts';
import { exit } from './exit.ts';
import { hanging } from './layout.ts';
import { choicesText, problemsText } from './problems-text.ts';
import { progress } from './progress.ts';
import { day, type Speaker, toAscii } from './speak.ts';
import { words } from './words.ts';

/** What a command has to say of each place, for people and for machines. */
export interface Answers {
  /** Whether a place could be answered; when none could, the command ends with 2. */
  readonly answered: boolean;
  readonly json: Readonly<Record<string, unknown>>;
  /** For people, without the heading. */
  readonly text: string;
  /** Shown when the working is asked for. */
  readonly derivation?: Derivation | undefined;
}

interface Frame {
  readonly json?: boolean | undefined;
  readonly title: string;
  /** Said once at the end, such as what the signs mean. */
  readonly foot?: string | undefined;
  readonly why?: boolean | undefined;
  readonly figure?: string | undefined;
}

/** Answers for each place in turn and shows it all; problems go to standard error, so that the rest can be piped on. */
export async function answer(
  read: ReadGarden,
  speaker: Speaker,
  frame: Frame,
  of: (place: Place, index: number) => Answers,
): Promise<number> {
  const { garden, problems, skipped } = read;
  const watch = progress(garden.places.length);
  const answers = garden.places.map((place, index) => {
    const found = of(place, index);
    watch.at(index + 1);
    return found;
  });
  watch.end();
  const nothing = answers.every((each) => !each.answered);
  const code = nothing ? exit.nothing : problems.length > 0 ? exit.partly : exit.fine;
  if (frame.json) {
    const { writeReport } = await import('@sorrel/engine/document');
    const report = writeReport(read, (_, index) => withWorking(answers[index]), speaker.system);
    process.stdout.write(`${JSON.stringify(report, null, 2)}\n`);
    return code;
  }
  if (problems.length > 0) process.stderr.write(`${problemsText(problems, skipped)}\n`);
  if (garden.places.length === 0) {
    process.stderr.write(`${words.nothingUsable}\n`);
    return code;
  }
  const parts = [`${garden.name}\n${frame.title}, ${day(garden.settings.today)}\n`];
  for (const [index, place] of garden.places.entries()) {
    const { text, derivation } = answers[index] as Answers;
    parts.push(`${place.name}\n${speaker.rule.repeat(place.name.length)}\n\n${text}\n`);
    if (derivation !== undefined) parts.push(`  ${words.why}\n\n${derivationText(derivation, frame.figure)}\n`);
  }
  const derivations = answers.flatMap(({ derivation }) => derivation ?? []);
  if (derivations.length > 0) parts.push((await import('./sources-text.ts')).sourcesText(derivations));
  if (frame.foot !== undefined && !nothing) parts.push(`${hanging('', frame.foot, 0)}\n`);
  const taken = choicesText(read.choices, speaker);
  if (taken !== '') parts.push(taken);
  const page = parts.join('\n');
  process.stdout.write(speaker.unicode ? page : toAscii(page));
  return code;
}

const withWorking = (found: Answers | undefined): Readonly<Record<string, unknown>> =>
  found?.derivation === undefined ? (found?.json ?? {}) : { ...found.json, derivation: found.derivation };
