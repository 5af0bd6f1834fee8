import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type House, openHouse, type Size, sizes } from './harness.ts';

let house: House;
beforeAll(async () => {
  house = await openHouse();
});
afterAll(() => house.close());

for (const size of Object.keys(sizes) as Size[])
  describe(`at ${sizes[size].width} px`, () => {
    it('goes from nothing to a garden with a place, and keeps it', async () => {
      const { page, complaints, leave } = await house.visit(size);
      await page.getByRole('button', { name: 'Start this garden' }).click();
      await page.getByText('Give the garden a name').waitFor();
      await page.getByLabel('Name of the garden').fill(`Home ${size}`);
      await page.getByRole('button', { name: 'Start this garden' }).click();
      await page.getByRole('heading', { name: 'Add a place' }).waitFor();

      // A wrong entry is said beside its field, and the focus goes there.
      await page.getByLabel('Name', { exact: true }).fill('Front bed');
      await page.getByLabel('Length and width').fill('large');
      await page.getByRole('button', { name: 'Add this place' }).click();
      const size4x8 = page.getByLabel('Length and width');
      expect(await size4x8.getAttribute('aria-invalid')).toBe('true');
      await page.waitForFunction(() => document.activeElement?.getAttribute('aria-invalid') === 'true');
      await size4x8.fill('4 x 8 ft');

      await page.getByRole('combobox', { name: 'What grows' }).pressSequentially('tom');
      await page.keyboard.press('ArrowDown');
      await page.keyboard.press('Enter');
      await page.getByRole('button', { name: /^Take away .*tomato/i }).waitFor();
      await page.getByRole('button', { name: 'Add this place' }).click();

      await page.getByRole('heading', { name: 'Front bed' }).waitFor();
      await page.getByText('Front bed added.').waitFor();
      expect(await page.getByText('There is no pH reading for this place yet').count()).toBeGreaterThan(0);

      if (house.keeps) {
        await page.reload();
        await page.getByRole('heading', { name: 'Front bed' }).waitFor();
      }
      await page.getByRole('link', { name: 'Garden', exact: true }).click();
      await page.getByText('Not tested yet').first().waitFor();
      expect(complaints).toEqual([]);
      await leave();
    });

    it('takes a place away, and the undo brings it back', async () => {
      const { page, leave } = await house.visit(size);
      await page.getByRole('link', { name: 'Invented rooftop of containers' }).click();
      await page.locator('ol').last().getByRole('link', { name: 'Camellia' }).click();
      await page.getByRole('link', { name: 'Edit this place' }).click();
      await page.getByRole('button', { name: 'Take this place away' }).click();
      await page.getByRole('button', { name: 'Yes, take it away' }).click();
      await page.getByRole('heading', { name: 'All places on one pH line' }).waitFor();
      expect(await page.getByRole('link', { name: /Camellia/ }).count()).toBe(0);
      await page.getByRole('button', { name: 'Undo' }).click();
      await page
        .getByRole('link', { name: /Camellia/ })
        .first()
        .waitFor();
      await leave();
    });
  });
