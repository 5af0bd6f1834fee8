import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type House, openHouse, type Size, sizes, type Visit } from './harness.ts';
import { look } from './look.ts';

let house: House;
beforeAll(async () => {
  house = await openHouse();
});
afterAll(() => house.close());

/** Begins a soil day on the first screen. */
async function begin({ page }: Visit, name: string): Promise<void> {
  await page.getByText('Start a soil day for many people').click();
  await page.getByLabel('Name of the soil day').fill(name);
  await page.getByLabel('Where').fill('Invented library');
  await page.getByRole('button', { name: 'Start this soil day' }).click();
  await page.getByRole('heading', { name: 'Nobody has checked in yet' }).waitFor();
}

const open = async ({ page }: Visit, screen: string): Promise<void> => {
  await page.getByRole('navigation', { name: 'Screens of this garden' }).getByRole('link', { name: screen }).click();
  await page.getByRole('heading', { level: 1 }).waitFor();
};

for (const size of Object.keys(sizes) as Size[])
  describe(`a soil day at ${sizes[size].width} px`, () => {
    it('goes from an empty day by keyboard through check-in, labels, checks and readings', async () => {
      const visit = await house.visit(size);
      const { page } = visit;
      const press = (...keys: string[]) =>
        keys.reduce((before, key) => before.then(() => page.keyboard.press(key)), Promise.resolve());
      try {
        await begin(visit, `Invented soil day ${size}`);
        await look(visit, 'day-empty', size);
        await page.getByRole('link', { name: 'Check in the first sample' }).click();
        await page.getByLabel('First name').focus();
        await page.keyboard.type('Invented');
        await press('Enter');
        await page.keyboard.type('Mill Lane');
        await press('Enter', 'Enter');
        await page.keyboard.type('tomato');
        await page
          .getByRole('option', { name: /^Tomato/ })
          .first()
          .waitFor();
        await press('Enter', 'Enter');
        await page.keyboard.type('100 sq ft');
        await press('Enter', 'Enter');
        await page.getByRole('row', { name: /A001/ }).getByText('Tomato').waitFor();
        // The next form stands ready with the next code, the name first.
        await expect.poll(() => page.getByLabel('Code on the bag').inputValue()).toBe('A002');
        for (let bag = 2; bag <= 12; bag++) {
          await press('Enter', 'Enter', 'Enter', 'Enter', 'Enter', 'Enter');
          await expect
            .poll(() => page.getByLabel('Code on the bag').inputValue())
            .toBe(`A${String(bag + 1).padStart(3, '0')}`);
        }
        await page.getByLabel('Code on the bag').fill('a003');
        await page.getByRole('button', { name: 'Check in, next bag' }).click();
        await page.getByText('a003 is taken. The next free code is A013.').waitFor();
        await look(visit, 'day-check-in', size);

        await page.getByRole('button', { name: 'Change A002' }).click();
        await page.getByLabel('Neighbourhood').fill('Hill Road');
        await page.getByRole('button', { name: 'Save the change' }).click();
        await page.getByRole('row', { name: /A002/ }).getByText('Hill Road').waitFor();
        await page.getByRole('button', { name: 'Remove A012' }).click();
        await page.getByText('A012 removed.').waitFor();
        await expect.poll(() => page.getByRole('row', { name: /A012/ }).count()).toBe(0);
        await page.getByRole('button', { name: 'Undo' }).click();
        await page.getByRole('row', { name: /A012/ }).waitFor();

        await page.getByRole('link', { name: 'Labels' }).click();
        await page.getByRole('img', { name: 'Code that leads to sample A012' }).waitFor();
        await look(visit, 'day-labels', size);
        if (house.keeps) {
          const href = await page.getByRole('link', { name: 'Open all as PDF' }).getAttribute('href');
          const pdf = await page.request.get(new URL(href ?? '', house.url).href);
          expect((await pdf.body()).subarray(0, 5).toString()).toBe('%PDF-');
        }

        await open(visit, 'Readings');
        await page.getByText('Give the meter a name first').waitFor();
        await page.getByRole('combobox', { name: 'Meter', exact: true }).fill('Blue');
        await page.getByRole('heading', { name: 'Put the meter into a buffer' }).waitFor();
        const shows = page.getByLabel('The meter shows');
        await shows.fill('7.2');
        // BUFFER_US: buffer 7 reads 7.02 at 20 °C; quality limit 0.1.
        await page.getByText('Off by +0.18: more than 0.1').waitFor();
        await look(visit, 'day-check', size);
        await shows.press('Enter');
        await page.getByText('Calibrate the meter now').waitFor();
        await page.keyboard.type('7.03');
        await press('Enter');
        await page.getByRole('heading', { name: 'Read the reference soil' }).waitFor();
        await page.getByLabel('pH of the reference soil').fill('6.3');
        await page.getByLabel('The meter shows').fill('6.25');
        await press('Enter');
        const ph = page.getByLabel('pH of A001');
        await ph.waitFor();
        await page.keyboard.type('64');
        await page.getByText('Is the point missing? 6.4 is a pH.').waitFor();
        await look(visit, 'day-reading', size);
        await ph.fill('3.6');
        await press('Enter');
        await page.getByText('A soil of pH 3.6 is rare.').waitFor();
        await ph.fill('6,4');
        await press('Enter');
        for (let bag = 2; bag <= 10; bag++) {
          await page.getByLabel(`pH of A${String(bag).padStart(3, '0')}`).waitFor();
          await page.keyboard.type(`5.${bag - 1}`);
          await press('Enter');
        }
        // After ten samples the plan steps in: the buffer, then one sample a second time.
        await page.getByRole('heading', { name: 'Put the meter into a buffer' }).waitFor();
        await page.keyboard.type('7.02');
        await press('Enter');
        await page.getByRole('heading', { name: 'Read sample A001 a second time' }).waitFor();
        await page.keyboard.type('6.9');
        await press('Enter');
        await page.getByLabel('pH of A011').waitFor();
        await page.getByText('Grid', { exact: true }).click();
        await look(visit, 'day-grid', size);
        await page.getByLabel('pH of A011').fill('6.1');
        await press('Enter');
        await page.keyboard.type('7.4');
        await press('Enter');
        await page.getByText('0 of 12 samples still wait for a pH.').waitFor();

        await page.getByRole('link', { name: 'Meters and repeats' }).click();
        await page.getByText('1 reading cannot be trusted.').waitFor();
        await page.getByText('Its two readings differ.').waitFor();
        await page.getByText('The checks as a table').click();
        await page.getByText('the two readings differ', { exact: true }).waitFor();
        await look(visit, 'day-meters', size);
        await page.getByRole('link', { name: 'Read A001 again' }).click();
        await page.getByLabel('pH of A001').waitFor();
      } finally {
        await visit.leave();
      }
    });
  });
