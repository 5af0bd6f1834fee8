import type * as Handouts from './handouts.ts';
import { fixed, verdict } from './report.ts';

/** The part of the bench about a soil day's handouts, line by line. */
export async function handoutLines(quick: boolean): Promise<readonly string[]> {
  const { benchHandouts, STARTED }: typeof Handouts = await import('./handouts.ts');
  const times = await (quick ? benchHandouts(60, 20, 1) : benchHandouts(300, 60));
  const seconds = (ms: number) => fixed(ms / 1000, 2);
  const lines = [
    "## A soil day's handouts",
    '',
    `${times.handouts} handouts with a pH line and a QR code, ${times.pages} pages in one file: ${seconds(times.ours)} s, ${fixed(times.ours / times.pages, 1)} ms a page. No two rounds print the same words.`,
    '',
    '| against | pages | seconds | ratio | bound | |',
    '|---|---:|---:|---:|---|---|',
    `| the typesetter alone: the same words as plain paragraphs, nothing drawn | ${times.plainPages} | ${seconds(times.plain)} | **${fixed(times.toPlain, 2)}** a page | at most 3 | ${verdict(times.toPlain, 3)} |`,
  ];
  if (times.browser === undefined) return [...lines, '', 'No browser to be had.'];
  const { printed, together, alone, started, pages, toTogether, toAlone, toStarted } = times.browser;
  const faster = (ratio: number) => (ratio >= 20 ? 'within' : '**outside the bound**');
  return [
    ...lines,
    `| Chromium, started for each person (measured on ${STARTED}) | ${(pages * times.handouts) / printed} | ${seconds(started)} | **${fixed(toStarted)}** times ours | at least 20 | ${faster(toStarted)} |`,
    `| Chromium running, a document a person | ${(pages * times.handouts) / printed} | ${seconds(alone)} | **${fixed(toAlone)}** times ours | at least 20 | ${faster(toAlone)} |`,
    `| Chromium running, everything in one document | ${(pages * times.handouts) / printed} | ${seconds(together)} | **${fixed(toTogether)}** times ours | at least 20 | ${faster(toTogether)} |`,
    '',
    printed === times.handouts
      ? 'The browser was started before and printed all of them.'
      : `The browser was started before and printed ${printed} of them; its times are scaled to ${times.handouts}.`,
  ];
}
