import type { Problem } from '@sorrel/engine/document';
import { intakeWords } from '../intake-words.ts';
import { hanging } from '../layout.ts';
import { words } from '../words.ts';
import type { TakenIn } from './planner.ts';

/** Rows to mend of this many lines are shown; the others are in the list, when there is one. */
const MOST_SHOWN = 20;

/** Adds up what became of all rows, in little memory however many there are. */
export function summary() {
  let [planned, attention] = [0, 0];
  const shown: string[] = [];
  const notes = new Map<string, TakenIn['notes'][number]>();
  return {
    get planned(): number {
      return planned;
    },
    get attention(): number {
      return attention;
    },
    add(done: TakenIn): void {
      planned += done.planned;
      attention += done.attention;
      for (const { line, problems } of done.shown)
        if (shown.length < MOST_SHOWN) shown.push(problems.map((each) => problemText(line, each)).join('\n'));
      for (const note of done.notes) {
        const key = `${note.kind} ${note.title}`;
        notes.set(key, { ...note, count: note.count + (notes.get(key)?.count ?? 0) });
      }
    },
    text(): string {
      const lines = [intakeWords.done(planned + attention, planned, attention), ...shown];
      if (attention > shown.length) lines.push(intakeWords.more20(attention - shown.length));
      for (const { kind, title, count } of notes.values())
        lines.push(hanging('', intakeWords.notes[kind](title, count), 0));
      return `${lines.join('\n')}\n`;
    },
  };
}

function problemText(line: number, { field, message, fix }: Problem): string {
  const label = field === 'row' ? words.tableRow(line, undefined) : `${words.tableRow(line, undefined)}, ${field}`;
  return hanging('', `- ${label}: ${message} ${fix}`, 0).replaceAll('\n', '\n  ');
}
