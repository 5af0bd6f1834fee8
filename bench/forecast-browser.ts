import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { chromium } from 'playwright-core';
import { browser } from '../scripts/browser.mjs';

export interface Timed {
  readonly ratio: number;
  readonly forecast: number;
  readonly bare: number;
}

export const flags = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--disable-background-networking',
];

/** The forecast against its bare loop inside Chromium, by the wall clock; undefined when no browser can be had. */
export async function benchForecastInBrowser(rounds = 25): Promise<Timed | undefined> {
  const executablePath = await browser();
  if (executablePath === undefined) return undefined;
  const bundle = await build({
    stdin: {
      contents: `import { benchForecast } from './forecast.ts'; globalThis.benchForecast = benchForecast;`,
      resolveDir: fileURLToPath(new URL('.', import.meta.url)),
      loader: 'ts',
    },
    bundle: true,
    format: 'iife',
    write: false,
    logLevel: 'silent',
  });
  const opened = await chromium.launch({ executablePath, args: flags });
  try {
    const page = await opened.newPage();
    await page.addScriptTag({ content: bundle.outputFiles[0]?.text ?? '' });
    return await page.evaluate((count) => {
      const { benchForecast } = globalThis as unknown as {
        benchForecast(rounds: number, now: () => number): Timed;
      };
      return benchForecast(count, () => performance.now() / 1000);
    }, rounds);
  } finally {
    await opened.close();
  }
}
