/** What the command about laboratories' files says of its own. */
export const intakeWords = {
  table: (name: string, form: string) => `${name}: ${form}`,
  text: (encoding: string, delimiter: string) => `text in ${encoding}, cells between ${delimiter}`,
  delimiters: { ',': 'commas', ';': 'semicolons', '\t': 'tabs', '|': 'bars' } as Readonly<Record<string, string>>,
  workbook: (sheet: string, others: number) =>
    others === 0
      ? `workbook, sheet "${sheet}"`
      : `workbook, sheet "${sheet}" of ${others + 1}; another one with --sheet`,
  header: (lines: readonly number[]) =>
    lines.length === 0
      ? 'no titles were found; columns are called by number'
      : `titles on ${lines.length === 1 ? `line ${lines[0]}` : `lines ${lines[0]} to ${lines.at(-1)}`}`,
  above: (lines: readonly number[]) => `Lines above the table that are not read: ${lines.join(', ')}.`,
  remembered: (sender: string | undefined) =>
    sender === undefined ? 'Read as remembered.' : `Read as remembered for ${sender}.`,
  gone: (titles: readonly string[]) => `Remembered, and not in this file: ${titles.join(', ')}.`,
  cameBack: 'This is a list of rows to mend that came back; lines are those of the first file.',
  columnsTitle: 'Columns',
  columns: ['Title', 'Means', 'In', 'Such as', 'Why'] as const,
  assumedTitle: 'Taken for granted, because no column tells',
  openTitle: (count: number) => (count === 1 ? 'One question is open' : `${count} questions are open`),
  option: (id: string, value: string) => `--answer "${id}=${value}"`,
  wants: { length: 'a depth, such as 6 in', ph: 'a pH, such as 6.5', percent: 'a percentage, such as 100' },
  suggested: (label: string) => `Suggested: ${label}.`,
  more: 'Each answer stands after --answer. With --sender FILE they are remembered for the next file.',
  ready: 'Nothing is open. Plans come with --plans FILE, or --plans - to print them.',
  openStill: 'Nothing was planned: answer first.',
  notAnswered: (id: string, known: readonly string[]) =>
    `nothing called "${id}" was asked. Open are: ${known.length === 0 ? 'no questions' : known.join(', ')}.`,
  answerForm: (text: string) => `--answer wants QUESTION=ANSWER, such as "ph-method=water-1:1", not "${text}".`,
  columnForm: (text: string) => `--column wants TITLE=MEANING, such as "Soil=texture" or "Ca=not-used", not "${text}".`,
  noColumn: (title: string, known: readonly string[]) =>
    `there is no column "${title}". There are: ${known.join(', ')}.`,
  badSender: (file: string, reason: string) => `${file} does not say how a sender writes: ${reason}`,
  kept: (file: string) => `How this sender writes is kept in ${file}.`,
  done: (rows: number, planned: number, attention: number) =>
    `${rows} rows read: ${planned} planned, ${attention} to be looked at${attention === 0 ? '.' : ':'}`,
  more20: (count: number) =>
    `... and ${count} more. Use --mend FILE to keep them all, mend them, and read that file again.`,
  notes: {
    below: (title: string, count: number) =>
      `${title}: ${count} below what the laboratory can tell, not used as figures.`,
    'not-detected': (title: string, count: number) =>
      `${title}: ${count} not detected or not determined, not used as figures.`,
    'no-day': (title: string, count: number) => `${title}: ${count} without a day, counted as of today.`,
  },
} as const;

export const intakeHelp: Readonly<Record<string, string>> = {
  intake: `sorrel intake FILE [options]

Reads a table as a laboratory sends it, text or XLSX: says what each column
seems to be, and asks what the file does not tell. With --plans each row
becomes a row of plans or a row to be mended, and never both or neither.

  --answer "Q=A"      answer a question; as often as there are questions
  --column "T=M"      column T means M, such as texture; or not-used
  --suggested         take the answers that are suggested
  --sender FILE       how this sender writes: read from FILE when it is there,
                      and kept in it once nothing is open
  --name NAME         who the sender is; --laboratory NAME for the tests
  --sheet NAME        sheet of a workbook
  --plans FILE        write the plans, - to print them
  --mend FILE         write the rows to be mended; read that file again later
  --units metric|us   units of the amounts
  --json              for machines; plans as one JSON object a line
  --threads N         share a large file over N threads
  --as-of DAY         plan as if today were DAY
  --region NAME       state or country of the laboratory
  --climate NAME      typical climate, for the dates
  --material NAME     material at hand, and --cce "95 %" from its label
`,
};
