import { bundled } from './bundled.ts';
import type * as ForecastBench from './forecast.ts';
import { benchForecastInBrowser, type Timed } from './forecast-browser.ts';
import { fixed, verdict } from './report.ts';

/** The part of the report on the forecast. */
export async function forecastLines(quick: boolean): Promise<string[]> {
  const rounds = quick ? 15 : 60;
  const { benchForecast } = await bundled<typeof ForecastBench>('forecast.ts');
  const row = (where: string, { forecast, bare, ratio }: Timed) =>
    `| ${where} | ${fixed(1000 * forecast)} | ${fixed(1000 * bare)} | **${fixed(ratio, 2)}** | ${verdict(ratio, 5, 2)} |`;
  const inNode = benchForecast(rounds);
  const inBrowser = await benchForecastInBrowser(rounds);
  return [
    '## The forecast',
    '',
    '2,000 members, three years in weekly steps, against a bare typed-array loop that evaluates as many exponentials in the',
    'same run. Bound: 5 times; aim: 2 times.',
    '',
    `The count, ${inNode.exponentials.toLocaleString('en-US')}, is what the model of docs/model.md asks for: one logarithm and one exponential for each member and`,
    'inner step. The quick kernel takes most of them from short series (docs/model.md, section 11); the plain kernel calls',
    '`Math` for every one, and a test holds both to the same count. Random draws and set-up are timed but not counted.',
    '',
    '| where | ours, ms | bare loop, ms | ratio | |',
    '|---|---:|---:|---:|---|',
    row('Node, processor time', inNode),
    inBrowser === undefined ? '| Chromium | | | no browser to be had | |' : row('Chromium, wall clock', inBrowser),
  ];
}
