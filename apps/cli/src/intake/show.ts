import type { FileForm, Proposal } from '@sorrel/intake';
import { intakeWords as words } from '../intake-words.ts';
import { hanging } from '../layout.ts';
import { tableText } from '../table-text.ts';

const LONGEST = 28;
const short = (text: string): string => (text.length > LONGEST ? `${text.slice(0, LONGEST - 1)}…` : text);
/** The end of a title tells its column from those beside it. */
const shortTitle = (text: string): string => (text.length > LONGEST ? `…${text.slice(1 - LONGEST)}` : text);

/** How a file is taken, for a person to confirm: its form, its columns with examples, and what is open. */
export function proposalText(proposal: Proposal): string {
  const { name, form, header, columns, assumed, questions, remembered, returned } = proposal;
  const parts = [`${words.table(name, formText(form))}; ${words.header(header.lines)}.`];
  if (header.above.length > 0) parts.push(words.above(header.above));
  if (returned !== undefined) parts.push(words.cameBack);
  if (remembered !== undefined) {
    parts.push(words.remembered(remembered.sender));
    if (remembered.gone.length > 0) parts.push(words.gone(remembered.gone));
  }
  const [title, means, unit, examples, why] = words.columns;
  parts.push(
    `\n${tableText(
      [
        { title, flexible: true },
        { title: means, flexible: true },
        { title: unit },
        { title: examples, flexible: true },
        { title: why, flexible: true },
      ],
      columns.map((column) => [
        shortTitle(column.title),
        column.used ? column.label : `(${column.label})`,
        [column.unit, column.method].filter((each) => each !== undefined).join(', '),
        short(column.examples.slice(0, 2).join('; ')),
        column.reason,
      ]),
    )}`,
  );
  if (assumed.length > 0)
    parts.push(`\n${words.assumedTitle}\n${assumed.map((each) => hanging('', `- ${each}`, 0)).join('\n')}`);
  parts.push(questions.length === 0 ? `\n${words.ready}` : `\n${questionsText(proposal)}`);
  return `${parts.join('\n')}\n`;
}

/** The open questions, each with the options that answer it. */
export function questionsText({ questions }: Proposal): string {
  const parts = questions.map(({ id, text, choices, wants, suggested, examples }) => {
    const lines = [hanging('', `- ${text}`, 0)];
    if (examples.length > 0) lines.push(`  ${examples.slice(0, 3).map(short).join('; ')}`);
    for (const { value, label } of choices.slice(0, 20))
      lines.push(`    ${words.option(id, value)}${label === value ? '' : `  (${label})`}`);
    if (wants !== undefined) lines.push(`    ${words.option(id, '...')}  (${words.wants[wants]})`);
    const known = choices.find((each) => each.value === suggested);
    if (known !== undefined) lines.push(`  ${words.suggested(known.label)}`);
    return lines.join('\n');
  });
  return `${words.openTitle(questions.length)}\n${parts.join('\n')}\n${words.more}`;
}

function formText(form: FileForm): string {
  return form.kind === 'text'
    ? words.text(form.encoding, words.delimiters[form.delimiter] ?? form.delimiter)
    : words.workbook(form.sheet, form.sheets.length - 1);
}
