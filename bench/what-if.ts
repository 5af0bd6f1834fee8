// How long a what-if takes to be painted anew. Runs alone too: `node scripts/run.mjs bench/what-if.ts`.
import type { ChildProcess } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium, type Page } from 'playwright-core';
import { browser } from '../scripts/browser.mjs';
import { flags } from './forecast-browser.ts';
import { median, share } from './measure.ts';
import { started } from './server.ts';

/** The processor of the page is slowed so many times. */
export const THROTTLE = 4;
/** Milliseconds in which nineteen of twenty moves must be painted. */
export const BOUND = 50;

/** `none`: a page with a slider and the figure it stands at, and nothing else: what the browser itself takes. */
export type Bed = 'plain' | 'learned' | 'none';

export type Control = 'target' | 'depth' | 'date' | 'material';

export interface Painted {
  readonly bed: Bed;
  readonly control: Control;
  /** Milliseconds from the key to the painted answer. */
  readonly ms: number;
}

export interface Spread {
  readonly p50: number;
  readonly p95: number;
}

/** A bed whose doses are reckoned from a single test, and one that has learned from earlier doses and retests. */
const beds = { plain: 'Squash and corn plot', learned: 'Long vegetable bed' } as const;
const controls = [
  { control: 'target', select: 'input[type=range] >> nth=0' },
  { control: 'depth', select: 'input[type=range] >> nth=1' },
  { control: 'date', select: 'input[type=range] >> nth=2' },
  { control: 'material', select: 'select' },
] as const;

/**
 * Moves every control of the what-if of two places with the keyboard, in the built pages on a slowed processor.
 *
 * A move is timed from the key's own time stamp to the end of the frame that shows the answer: the next frame is waited
 * for, with a message behind it, which arrives when the frame has been handed over for painting. The engine's quick
 * answer, dose and picture, must be in that frame. Should either still be redrawn before the slider counts as at rest,
 * the frame of the last redrawing counts.
 *
 * Needs the built web app and server. @returns undefined when no browser can be had
 */
export async function whatIf(moves = 40): Promise<readonly Painted[] | undefined> {
  const executablePath = await browser();
  if (executablePath === undefined) return undefined;
  const folder = mkdtempSync(join(tmpdir(), 'sorrel-bench-what-if-'));
  let server: ChildProcess | undefined;
  const opened = await chromium.launch({ executablePath, args: flags });
  try {
    const env = { PORT: '0', SORREL_DATA: folder, SORREL_LOG: 'warn', DATABASE_URL: '', HOST: '' };
    const [address, child] = await started(['apps/server/dist/server.mjs'], env);
    server = child;
    const page = await opened.newPage({ viewport: { width: 390, height: 844 } });
    await page.addInitScript({ path: fileURLToPath(new URL('what-if-page.js', import.meta.url)) });
    const found: Painted[] = [];
    const throttle = await page.context().newCDPSession(page);
    await page.goto(`data:text/html,${encodeURIComponent(barePage)}`);
    await throttle.send('Emulation.setCPUThrottlingRate', { rate: THROTTLE });
    await page.locator('input').focus();
    await move(page, moves, 'target', (ms) => found.push({ bed: 'none', control: 'target', ms }));
    await throttle.send('Emulation.setCPUThrottlingRate', { rate: 1 });
    for (const bed of ['plain', 'learned'] as const) {
      await openWhatIf(page, address, beds[bed]);
      await throttle.send('Emulation.setCPUThrottlingRate', { rate: THROTTLE });
      for (const { control, select } of controls) {
        const element = page.locator('section[aria-labelledby="what-if"]').locator(select);
        await element.focus();
        await move(page, moves, control, (ms) => found.push({ bed, control, ms }));
      }
      await throttle.send('Emulation.setCPUThrottlingRate', { rate: 1 });
    }
    return found;
  } finally {
    await opened.close();
    if (server !== undefined) {
      const ended = new Promise((resolve) => server?.once('exit', resolve));
      server.kill();
      await ended;
    }
    rmSync(folder, { recursive: true, force: true });
  }
}

const barePage = `<section aria-labelledby="what-if"><input type="range"><output id="what-if">50</output></section>
<script>document.querySelector('input').oninput = (event) => {
  document.querySelector('output').textContent = event.target.value;
};</script>`;

async function openWhatIf(page: Page, address: string, place: string): Promise<void> {
  await page.goto(address);
  await page.getByRole('link', { name: 'Invented garden on sour ground' }).click();
  await page.locator('ol').last().getByRole('link', { name: place }).click();
  await page.getByText('The doses are checked.').waitFor({ state: 'attached' });
  await page.getByText('Move a slider').click();
  await page.locator('section[aria-labelledby="what-if"] svg').waitFor();
}

/** Back and forth over the whole scale; the first moves warm up. */
async function move(page: Page, moves: number, control: Control, found: (ms: number) => void) {
  const warmUp = 6;
  for (let done = 0; done < moves + warmUp; done++) {
    const forth = Math.floor(done / 8) % 2 === 0;
    await page.keyboard.press(
      control === 'material' ? (forth ? 'ArrowDown' : 'ArrowUp') : forth ? 'ArrowRight' : 'ArrowLeft',
    );
    const ms = await page.evaluate<number | null>('moved()');
    // At an end of the scale nothing moves.
    if (ms !== null && done >= warmUp) found(ms);
    // Against falling into step with the frames.
    await page.waitForTimeout((done * 7) % 17);
  }
}

export function spreadOf(values: readonly number[]): Spread {
  return { p50: median(values), p95: share(values, 0.95) };
}

/** One row a bed and a control, and one a bed over all controls: p50 and p95 in ms, and whether within the bound. */
export function rowsOf(
  found: readonly Painted[],
): readonly (Spread & { bed: string; control: string; moves: number })[] {
  return (['none', 'plain', 'learned'] as const).flatMap((bed) => {
    const of = found.filter((each) => each.bed === bed);
    const each = bed === 'none' ? [] : controls.map(({ control }) => control);
    return [...each, 'all' as const].map((control) => {
      const times = of.filter((each) => control === 'all' || each.control === control).map(({ ms }) => ms);
      return { bed, control, moves: times.length, ...spreadOf(times) };
    });
  });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const found = await whatIf(Number(process.argv[2] ?? 40));
  if (found === undefined) console.log('No browser could be had.');
  else
    for (const { bed, control, moves, p50, p95 } of rowsOf(found))
      console.log(
        `${bed} bed, ${control}, ${moves} moves: p50 ${p50.toFixed(1)} ms, p95 ${p95.toFixed(1)} ms, ${p95 <= BOUND ? 'within' : 'outside'} the bound of ${BOUND} ms`,
      );
}
