import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type House, openHouse, type Size, sizes } from './harness.ts';
import { look } from './look.ts';

let house: House;
beforeAll(async () => {
  house = await openHouse();
});
afterAll(() => house.close());

/** A keyboard takes many steps. */
const MINUTES = 240_000;
const SOUR = 'Invented garden on sour ground';

/** Goes on with the tabulator until the focus is there, as somebody without a mouse does. */
async function tabTo(page: Page, to: Locator): Promise<void> {
  await to.waitFor();
  for (let presses = 0; presses < 150; presses++) {
    if (await to.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`the keyboard does not reach ${to}`);
}

async function press(page: Page, to: Locator): Promise<void> {
  await tabTo(page, to);
  await page.keyboard.press('Enter');
}

/** Goes down a closed list until it shows the option. */
async function pick(page: Page, to: Locator, option: string): Promise<void> {
  await tabTo(page, to);
  const shown = () => to.evaluate((element) => (element as HTMLSelectElement).selectedOptions[0]?.text ?? '');
  for (let presses = 0; presses < 20 && !(await shown()).includes(option); presses++)
    await page.keyboard.press('ArrowDown');
  expect(await shown()).toContain(option);
}

async function want(page: Page, plant: string, found: string, area: string): Promise<void> {
  await tabTo(page, page.getByRole('combobox', { name: 'Add a plant' }));
  await page.keyboard.type(plant);
  await page.getByRole('option', { name: found }).first().waitFor();
  await page.keyboard.press('Enter');
  await tabTo(page, page.getByRole('textbox', { name: `How much of ${found}` }));
  await page.keyboard.type(area);
}

for (const size of Object.keys(sizes) as Size[])
  describe(`placing at ${sizes[size].width} px, by keyboard alone`, () => {
    it(
      'asks for plants, finds the proven best places, takes them over and back, and goes onto paper',
      async () => {
        const visit = await house.visit(size);
        const { page } = visit;
        try {
          await press(page, page.getByRole('link', { name: SOUR }));
          await page.getByRole('heading', { name: 'All places on one pH line' }).waitFor();
          await press(
            page,
            page.getByRole('navigation', { name: 'Screens of this garden' }).getByRole('link', { name: 'Placing' }),
          );
          await page.getByRole('heading', { level: 1, name: 'What to grow where' }).waitFor();

          // Nothing wished for is said, and the focus goes where a plant can be named.
          await press(page, page.getByRole('button', { name: 'Arrange' }));
          await page.getByText('Please look at the marked entries.').waitFor();
          expect(
            await page
              .getByRole('combobox', { name: 'Add a plant' })
              .evaluate((element) => element === document.activeElement),
          ).toBe(true);

          await tabTo(page, page.getByRole('radio', { name: '1 season' }));
          await page.keyboard.press('ArrowRight');
          expect(await page.getByRole('radio', { name: '2 seasons' }).isChecked()).toBe(true);
          await want(page, 'tomato', 'Tomato', '30');
          await want(page, 'cabbage', 'Cabbage', '24');
          await want(page, 'radish', 'Radish', '8');
          await pick(page, page.getByRole('combobox', { name: 'Where Radish grows' }), 'In Potato bed');
          const now = page.getByRole('region', { name: 'What is in the places now' });
          const potatoBed = now.getByRole('listitem').filter({ hasText: 'Potato bed' });
          await press(page, potatoBed.locator('summary'));
          await pick(page, potatoBed.getByRole('combobox', { name: 'Light in Potato bed' }), 'Full sun');
          await look(visit, 'placing-wishes', size);

          await press(page, page.getByRole('button', { name: 'Arrange' }));
          await page.getByText('This was proved, not guessed.', { exact: false }).waitFor({ timeout: 60_000 });
          const table = page.getByRole('table', { name: 'Places and what grows in them' });
          const row = table.getByRole('row').filter({ hasText: 'Potato bed' });
          expect(await row.getByText('Radish').count()).toBeGreaterThan(0);
          await page.getByText('Keep these apart from the acid-lovers', { exact: false }).waitFor();
          const ways = page.getByRole('table', { name: 'Three ways beside each other' });
          expect(await ways.getByRole('rowheader', { name: 'Plant by plant' }).count()).toBe(1);
          await look(visit, 'placing', size);

          await press(page, page.getByRole('button', { name: 'Take over into the places' }));
          await page.getByText(/\d places? got (its|their) plants/).waitFor();
          await potatoBed.getByText(/makes room: .*Radish/).waitFor();
          await press(page, page.getByRole('button', { name: 'Undo' }));
          await page.getByText('Taken back.').waitFor();
          await potatoBed.getByText(/makes room: potato/).waitFor();

          if (house.keeps) {
            const file = page.waitForEvent('download');
            await press(page, page.getByRole('button', { name: 'Get the handout (PDF)' }));
            const pdf = readFileSync(await (await file).path());
            expect(pdf.subarray(0, 5).toString('latin1')).toBe('%PDF-');
          }

          // The list is kept on this device.
          await page.goto(page.url());
          expect(await page.getByRole('textbox', { name: 'How much of Tomato' }).inputValue()).toBe('30');
          expect(visit.complaints).toEqual([]);
        } finally {
          await visit.leave();
        }
      },
      MINUTES,
    );

    it(
      'says which plant finds no place and why, and stops when asked to',
      async () => {
        const visit = await house.visit(size);
        const { page } = visit;
        try {
          await page.getByRole('link', { name: SOUR }).click();
          await page.getByRole('link', { name: 'Placing' }).click();
          await want(page, 'cabbage', 'Cabbage', '9000');
          await press(page, page.getByRole('button', { name: 'Arrange' }));
          const missing = page.getByText('No place found for');
          await missing.waitFor({ timeout: 60_000 });
          await page
            .getByText(/of Cabbage has no place/)
            .first()
            .waitFor();
          await look(visit, 'placing-unmet', size);
          // A worker that never answers, so that there is time to stop it.
          await page.route('**/*.wasm', () => {});
          await press(page, page.getByRole('button', { name: 'Arrange again' }));
          await press(page, page.getByRole('button', { name: 'Cancel' }));
          await page.getByText('Stopped. Nothing was changed.').waitFor();
          expect(visit.complaints).toEqual([]);
        } finally {
          await visit.leave();
        }
      },
      MINUTES,
    );
  });
