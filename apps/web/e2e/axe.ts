import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

const script = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/**
 * Scans the page as it stands for WCAG 2.2 A and AA and axe's best practices.
 *
 * @returns each violation with the elements that break it; empty when clean
 */
export async function violations(page: Page): Promise<string[]> {
  // The page's content policy forbids added scripts, so the scan is evaluated by the browser's own debugger.
  await page.evaluate(script);
  const results = await page.evaluate(() =>
    (globalThis as unknown as { axe: { run(): Promise<AxeResults> } }).axe.run(),
  );
  return results.violations.map(
    ({ id, help, nodes }) =>
      `${id}: ${help}\n  ${nodes.map((node) => `${node.html} ${node.failureSummary}`).join('\n  ')}`,
  );
}

/** How far the page is wider than its window, px: a phone must never scroll sideways. */
export const sideways = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** Controls smaller than a finger: under 44 px both ways, links inside a text left out. */
export const smallTargets = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [
      ...document.querySelectorAll<HTMLElement>(
        'button, select, summary, input:not(.hidden-text), nav a, label:has(input)',
      ),
    ]
      .filter((element) => !element.closest('[aria-hidden=true]'))
      .filter((element) => element.checkVisibility({ opacityProperty: true, visibilityProperty: true }))
      .filter((element) => !element.closest('label') || element.tagName === 'LABEL')
      .flatMap((element) => {
        const { width, height } = element.getBoundingClientRect();
        return width < 44 || height < 44
          ? [`${element.outerHTML.slice(0, 90)} ${Math.round(width)}x${Math.round(height)}`]
          : [];
      }),
  );
