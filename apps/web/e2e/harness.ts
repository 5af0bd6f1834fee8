import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { serve } from './serve.ts';

const flags = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export const sizes = { phone: { width: 390, height: 844 }, desk: { width: 1280, height: 860 } } as const;
export type Size = keyof typeof sizes;

export interface House {
  readonly url: string;
  readonly browser: Browser;
  /** Whether gardens outlive a reload: false where they are kept in the page. */
  readonly keeps: boolean;
  /** A fresh visitor. Fails the test on any error the page reports. */
  visit(size: Size, options?: BrowserContextOptions): Promise<Visit>;
  close(): Promise<void>;
}

export interface Visit {
  readonly page: Page;
  /** What the page complained of so far. */
  readonly complaints: readonly string[];
  leave(): Promise<void>;
}

/** Serves the built pages and opens the browser named by `CHROMIUM`, else the system's own. */
export async function openHouse(): Promise<House> {
  const served = await serve();
  const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium', args: flags });
  return {
    url: served.url,
    browser,
    keeps: served.keeps,
    async visit(size, options = {}) {
      const context = await browser.newContext({
        viewport: sizes[size],
        hasTouch: size === 'phone',
        isMobile: size === 'phone',
        locale: 'en-GB',
        ...options,
      });
      const page = await context.newPage();
      const complaints: string[] = [];
      page.on('console', (message) => {
        if (['error', 'warning'].includes(message.type())) complaints.push(message.text());
      });
      page.on('pageerror', (error) => complaints.push(String(error)));
      await page.goto(served.url);
      return { page, complaints, leave: () => context.close() };
    },
    async close() {
      await browser.close();
      await served.stop();
    },
  };
}

/** `docs/screens` when the pictures there are to be renewed (`npm run screens`); a test run leaves them alone. */
const pictures =
  process.env.SORREL_SCREENS === 'renew'
    ? fileURLToPath(new URL('../../../docs/screens/', import.meta.url))
    : `${mkdtempSync(join(tmpdir(), 'sorrel-screens-'))}/`;

/** Takes a picture of the whole screen, kept in `docs/screens` when asked for. */
export async function picture(page: Page, name: string, size: Size): Promise<void> {
  await page.evaluate(() => document.fonts.ready);
  await page.screenshot({ path: `${pictures}${name}-${sizes[size].width}.png`, fullPage: true });
}
