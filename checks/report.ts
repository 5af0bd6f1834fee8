import { cite, isSource } from '@sorrel/almanac';
import type { BadRow } from './cases.ts';
import { boundWords, figure, type Line } from './compare.ts';
import { closingLine, type Outcome, tally } from './judge.ts';

/** One file of cases, run. */
export interface FileResult {
  readonly name: string;
  readonly outcomes: readonly Outcome[];
  readonly bad: readonly BadRow[];
}

/** Why a case misses or cannot be computed, by id. */
export type Reasons = ReadonlyMap<string, { readonly state: string; readonly reason: string }>;

const noReason = 'not yet understood';

/** A figure as it stands in a table cell. */
export function shown(value: unknown): string {
  if (value === undefined) return '–';
  if (typeof value === 'number') return figure(value, 6);
  if (typeof value === 'string') return value;
  return JSON.stringify(value, (_, part) => (typeof part === 'number' ? Number(figure(part, 6)) : part));
}

const keysOf = (source: string) => source.split(';').map((key) => key.trim());

const word = { within: 'within', miss: '**miss**', failed: '**failed**', 'not computable': 'not computable' } as const;

/** The whole page: headline, misses with reasons, one table a file, what cannot be computed, the sources. */
export function reportPage(results: readonly FileResult[], reasons: Reasons): string {
  const all = results.flatMap(({ outcomes }) => outcomes);
  const missed = all.filter(({ state }) => state === 'miss' || state === 'failed');
  const silent = all.filter(({ state }) => state === 'not computable');
  const keys = [...new Set(all.flatMap(({ check }) => keysOf(check.source)))].sort((a, b) => a.localeCompare(b, 'en'));
  return [
    '# Published checks',
    '',
    '<!-- Written by `npm run check:published`. Edit the cases, the code or the reasons, not this page. -->',
    '',
    'Every case below was set up from a publication, run through the same functions that gardeners use, and compared.',
    'A case that misses stays here with the reason. The headline counts only cases whose expected figure was read in a',
    'publication. Figures from memory and figures we derived ourselves are counted apart. A note that calls the figure',
    'ours, corrected, inferred or interpolated puts a case among the derived ones.',
    '',
    `**${closingLine(tally(all))}**`,
    '',
    ...section('Misses', missed, reasons),
    ...results.flatMap(fileSection),
    ...section('What Sorrel has no way to compute yet', silent, reasons),
    '## Sources',
    '',
    ...keys.map((key) => `- **${key}**: ${isSource(key) ? cite(key) : 'not in the list of sources'}`),
    '',
  ].join('\n');
}

function section(title: string, outcomes: readonly Outcome[], reasons: Reasons): string[] {
  if (outcomes.length === 0) return [`## ${title}`, '', 'None.', ''];
  return [
    `## ${title}`,
    '',
    '| case | what | reason |',
    '|---|---|---|',
    ...outcomes.map(({ check, error }) => {
      const reason = reasons.get(check.id)?.reason ?? noReason;
      return row([check.id, check.title, error ? `${reason} (${error})` : reason]);
    }),
    '',
  ];
}

function fileSection({ name, outcomes, bad }: FileResult): string[] {
  const computed = outcomes.filter(({ verdict, error }) => verdict || error);
  return [
    `## ${name}`,
    '',
    closingLine(tally(outcomes)),
    '',
    ...bad.map((row) => `- line ${row.line} ${row.id}: ${row.fault}`),
    ...(bad.length > 0 ? [''] : []),
    '| case | given | figure | published | ours | difference | tolerance | verdict | source | basis |',
    '|---|---|---|---|---|---|---|---|---|---|',
    ...computed.flatMap(caseRows),
    '',
  ];
}

function caseRows({ check, basis, state, verdict, error }: Outcome): string[] {
  const lines: readonly Partial<Line>[] = verdict?.lines ?? [{ difference: error ?? '' }];
  const remarks = verdict && verdict.remarks.length > 0 ? ` (${verdict.remarks.join('; ')})` : '';
  return lines.map((line, at) => {
    const first = at === 0;
    return row([
      first ? `${check.id}: ${check.title}` : '',
      first ? given(check.inputs) : '',
      line.key ?? '',
      shown(line.published),
      shown(line.ours),
      line.difference ?? '',
      (line.bound ? boundWords(line.bound) : check.tolerance) + (first ? remarks : ''),
      first ? word[state] : line.within === false ? 'outside' : '',
      first ? check.source : '',
      first ? basis : '',
    ]);
  });
}

const given = (inputs: Outcome['check']['inputs']) =>
  Object.entries(inputs)
    .map(([key, value]) => `${key} ${shown(value)}`)
    .join(', ');

const row = (cells: readonly string[]) =>
  `| ${cells.map((cell) => cell.replace(/[\\|<]/g, '\\$&').replace(/\s+/g, ' ')).join(' | ')} |`;

/** The same for a terminal: *published / ours / difference / source*, one line a figure. */
export function reportText({ name, outcomes, bad }: FileResult, reasons: Reasons): string {
  const lines = [`\n${name}`];
  for (const { line, id, fault } of bad) lines.push(`  line ${line}${id && ` (${id})`}: ${fault}`);
  for (const { check, basis, state, verdict, error } of outcomes) {
    lines.push(`${mark[state]} ${check.id}  ${check.title}  [${basis}; ${check.source}]`);
    for (const line of verdict?.lines ?? [])
      lines.push(
        `      ${line.key}: ${shown(line.published)} / ${shown(line.ours)} / ${line.difference} / ${check.source}` +
          `  (${boundWords(line.bound)}${line.within ? '' : ', outside'})`,
      );
    for (const remark of verdict?.remarks ?? []) lines.push(`      note: ${remark}`);
    if (error) lines.push(`      failed: ${error}`);
    if (state !== 'within') lines.push(`      why: ${reasons.get(check.id)?.reason ?? noReason}`);
  }
  return lines.join('\n');
}

const mark = { within: '  ok ', miss: 'MISS ', failed: 'FAIL ', 'not computable': '  -- ' } as const;
