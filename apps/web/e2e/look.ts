import { expect } from 'vitest';
import { sideways, smallTargets, violations } from './axe.ts';
import { picture, type Size, type Visit } from './harness.ts';

/**
 * Keeps a picture of the screen as it stands and holds it to the rules: no accessibility violation in either scheme,
 * nothing wider than the window, no target under 44 px, no complaint from the browser.
 */
export async function look(visit: Visit, name: string, size: Size): Promise<void> {
  const { page } = visit;
  const close = page.getByRole('button', { name: 'Close' });
  if (await close.isVisible()) await close.click();
  await picture(page, name, size);
  const found = [...(await violations(page))];
  await page.emulateMedia({ colorScheme: 'dark' });
  found.push(...(await violations(page)).map((each) => `dark: ${each}`));
  await page.emulateMedia({ colorScheme: 'light' });
  expect(found).toEqual([]);
  expect(await sideways(page)).toBeLessThanOrEqual(0);
  expect(await smallTargets(page)).toEqual([]);
  expect(visit.complaints).toEqual([]);
}

/** Opens an invented garden and one of its screens by the bar. */
export async function openScreen({ page }: Visit, garden: string, screen: string): Promise<void> {
  await page.getByRole('link', { name: garden }).click();
  await page.getByRole('heading', { name: 'All places on one pH line' }).waitFor();
  await page.getByRole('navigation', { name: 'Screens of this garden' }).getByRole('link', { name: screen }).click();
  await page.getByRole('heading', { level: 1 }).waitFor();
}
