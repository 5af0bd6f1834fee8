import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type House, openHouse, type Size, sizes } from './harness.ts';
import { look, openScreen } from './look.ts';

let house: House;
beforeAll(async () => {
  house = await openHouse();
});
afterAll(() => house.close());

for (const size of Object.keys(sizes) as Size[])
  describe(`sampling at ${sizes[size].width} px`, () => {
    it('says which places share a sample and asks for more cores when it should come closer', async () => {
      const visit = await house.visit(size);
      const { page } = visit;
      try {
        await openScreen(visit, 'Invented garden on limy clay', 'Sampling');
        const bank = page.getByRole('listitem').filter({ has: page.getByRole('link', { name: 'Lavender bank' }) });
        // Dynamics table `sampling_n` (MODEL): spread 0.4 takes 16 cores for 0.2 and 62 for 0.1, more than anybody takes.
        await bank.getByText('16', { exact: true }).waitFor();
        await page.getByText('Why this many').first().click();
        await look(visit, 'sampling', size);
        await page.getByText('within 0.1 pH').click();
        await bank.getByText('40', { exact: true }).waitFor();
        await bank.getByText('Why this many').click();
        await bank.getByText('would take more than 40 cores').waitFor();
        await page.getByText('Galvanized, brass or copper tools').waitFor();
        await page.emulateMedia({ media: 'print' });
        expect(await page.getByRole('navigation').first().isVisible()).toBe(false);
        expect(await page.getByText('Taken by').first().isVisible()).toBe(true);
        expect(visit.complaints).toEqual([]);
      } finally {
        await visit.leave();
      }
    });

    it('leads through a home reading: buffers at their warmth, cups, salt, and a reading in the record', async () => {
      const visit = await house.visit(size);
      const { page } = visit;
      try {
        await openScreen(visit, 'Invented garden on limy clay', 'Sampling');
        await page.getByRole('link', { name: 'Home reading, step by step' }).click();
        await page.getByLabel('Which place is it?').selectOption({ label: 'Lavender bank' });
        // BUFFER_US: the 10 buffer reads 10.06 at 20 °C and 10.01 at 25 °C (77 °F).
        await page.getByText('should read 10.06 now').waitFor();
        await page.getByRole('textbox', { name: 'Warmth of the buffers' }).fill('25');
        await page.getByText('should read 10.01 now').waitFor();
        await page.getByRole('textbox', { name: 'Meter shows' }).nth(0).fill('4.2');
        await page.getByText('The meter is off by 0.20').waitFor();
        await page.getByRole('textbox', { name: 'Meter shows' }).nth(0).fill('4.02');
        await page.getByRole('textbox', { name: 'Meter shows' }).nth(1).fill('7.03');
        await page.getByText('The meter agrees with its buffers').waitFor();
        await page.getByText('My meter shows millivolts too').click();
        // A perfect slope is 59.16 mV at 25 °C: 177.5 mV over 3 pH (GENERAL).
        await page.getByRole('textbox', { name: 'Millivolts' }).nth(0).fill('177');
        await page.getByRole('textbox', { name: 'Millivolts' }).nth(1).fill('0');
        await page.getByText('100 % of the perfect slope: good').waitFor();
        await page.getByRole('button', { name: 'Save this reading' }).click();
        await page.getByText('Read at least one cup.').first().waitFor();
        await page.getByRole('textbox', { name: 'Cup 1' }).fill('7.4');
        await page.getByRole('textbox', { name: 'Cup 2' }).fill('7,6');
        await page.getByText('Middle of the cups: pH 7.50').first().waitFor();
        await page.getByText('Start 15 minutes').click();
        await page.getByText(/1[45]:\d\d left/).waitFor();
        await look(visit, 'home-reading', size);
        await page.getByRole('button', { name: 'Save this reading' }).click();
        await page.getByText('Home reading of Lavender bank saved: pH 7.5').waitFor();
        await page.getByText('meter in a slurry').first().waitFor();
        expect(visit.complaints).toEqual([]);
      } finally {
        await visit.leave();
      }
    });
  });
