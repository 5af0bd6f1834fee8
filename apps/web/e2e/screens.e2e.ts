import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sideways, smallTargets, violations } from './axe.ts';
import { type House, openHouse, picture, type Size, sizes, type Visit } from './harness.ts';

// Every screen at both sizes and in both schemes: no accessibility violation, nothing wider than the window, no target
// under 44 px (WCAG 2.2 asks 24, our design 44), no complaint from the browser. The pictures go to docs/screens.
let house: House;
beforeAll(async () => {
  house = await openHouse();
});
afterAll(() => house.close());

const open = (name: string) => async (visit: Visit) => {
  await visit.page.getByRole('link', { name }).click();
  await visit.page.getByRole('heading', { name: 'All places on one pH line' }).waitFor();
};
const place = (name: string) => async (visit: Visit) => {
  await open('Invented garden on sour ground')(visit);
  await visit.page.locator('ol').last().getByRole('link', { name }).click();
  await visit.page.getByRole('heading', { name: 'What pushes the pH' }).waitFor();
};

const screens: Readonly<Record<string, (visit: Visit) => Promise<void>>> = {
  gardens: async ({ page }) => page.getByRole('heading', { name: 'Look around an invented garden' }).waitFor(),
  garden: open('Invented garden on sour ground'),
  'garden-limy': open('Invented garden on limy clay'),
  'garden-pots': open('Invented rooftop of containers'),
  'garden-table': async (visit) => {
    await open('Invented garden on sour ground')(visit);
    await visit.page.getByText('Table', { exact: true }).click();
  },
  place: place('Long vegetable bed'),
  'place-opened': async (visit) => {
    await place('Long vegetable bed')(visit);
    const { page } = visit;
    await page.getByText('Move a slider').click();
    await page.getByText('The working').click();
    await page.getByText('All years as a table').click();
    await page.getByText('The forecast as a table').click();
    await page.getByText('All entries, newest first').click();
    await page.getByRole('heading', { name: 'Where the figures come from' }).waitFor();
    await page.getByText('Place added: Long vegetable bed').waitFor();
  },
  'add-place': async (visit) => {
    await open('Invented garden on sour ground')(visit);
    await visit.page.getByRole('link', { name: 'Add a place' }).click();
    await visit.page.getByRole('heading', { name: 'Add a place' }).waitFor();
  },
  'plant-lookup': async (visit) => {
    await open('Invented garden on sour ground')(visit);
    await visit.page.getByRole('link', { name: 'Add a place' }).click();
    await visit.page.getByLabel('What grows or will grow here').pressSequentially('blue');
    await visit.page.getByRole('option').first().waitFor();
  },
  'not-found': async ({ page }) => {
    await page.goto(`${house.url}nowhere`);
    await page.getByRole('heading', { name: 'There is no such page' }).waitFor();
  },
};

for (const size of Object.keys(sizes) as Size[])
  describe(`at ${sizes[size].width} px`, () => {
    for (const [name, go] of Object.entries(screens))
      it(name, async () => {
        const visit = await house.visit(size);
        const { page } = visit;
        try {
          await go(visit);
          await picture(page, name, size);
          const found = [...(await violations(page))];
          await page.emulateMedia({ colorScheme: 'dark' });
          found.push(...(await violations(page)).map((each) => `dark: ${each}`));
          expect(found).toEqual([]);
          expect(await sideways(page)).toBeLessThanOrEqual(0);
          expect(await smallTargets(page)).toEqual([]);
          expect(visit.complaints).toEqual([]);
        } finally {
          await visit.leave();
        }
      });
  });
