import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type House, openHouse, type Size, sizes } from './harness.ts';
import { look, openScreen } from './look.ts';

let house: House;
beforeAll(async () => {
  house = await openHouse();
});
afterAll(() => house.close());

const SOUR = 'Invented garden on sour ground';
const LIMY = 'Invented garden on limy clay';

for (const size of Object.keys(sizes) as Size[])
  describe(`settings at ${sizes[size].width} px`, () => {
    it('change units and risk for the garden, and are taken back', async () => {
      const visit = await house.visit(size);
      const { page } = visit;
      try {
        await openScreen(visit, LIMY, 'Settings');
        await look(visit, 'settings', size);
        const units = page.getByRole('group', { name: 'Units of this garden' });
        await units.getByText('US', { exact: true }).click();
        await page.getByText('1 in 50: very careful').click();
        await page.getByText('I have my own soil temperatures').click();
        await page.getByRole('textbox', { name: 'Jan' }).fill('');
        await page.getByRole('button', { name: 'Save these settings' }).click();
        await page.getByText('Fill in all twelve months.').waitFor();
        await page.getByRole('textbox', { name: 'Jan' }).fill('8.5');
        await page.getByRole('button', { name: 'Save these settings' }).click();
        await page.getByText('Settings saved.').waitFor();
        // Nobody chose units at the top of the page, so the garden's own hold there.
        expect(await page.getByRole('radio', { name: 'US' }).first().isChecked()).toBe(true);
        expect(await page.getByRole('radio', { name: '1 in 50: very careful' }).isChecked()).toBe(true);
        // 8.5 °C is 47.3 °F.
        expect(await page.getByRole('textbox', { name: 'Jan' }).inputValue()).toBe('47.3');
        await page.getByRole('button', { name: 'Undo' }).click();
        await page.getByText('Taken back.').waitFor();
        expect(await page.getByRole('radio', { name: '1 in 20: as usual' }).isChecked()).toBe(true);
        expect(visit.complaints).toEqual([]);
      } finally {
        await visit.leave();
      }
    });

    it('plan a certified-organic garden with what certifiers allow', async () => {
      const visit = await house.visit(size);
      const { page } = visit;
      try {
        await openScreen(visit, SOUR, 'Settings');
        await page.getByText('Certified organic', { exact: true }).click();
        await page.getByRole('button', { name: 'Save these settings' }).click();
        await page.getByText('Settings saved.').waitFor();
        await page
          .getByRole('navigation', { name: 'Screens of this garden' })
          .getByRole('link', { name: 'Garden' })
          .click();
        await page.locator('ol').last().getByRole('link', { name: 'Squash and corn plot' }).click();
        await page.getByText('Only materials that organic certifiers usually allow').first().waitFor();
        await page.getByRole('button', { name: 'Undo' }).click();
        await page.getByText('Only materials that organic certifiers usually allow').waitFor({ state: 'detached' });
        expect(visit.complaints).toEqual([]);
      } finally {
        await visit.leave();
      }
    });

    it('keep materials with the figures of their label, refuse what harms, and say why', async () => {
      const visit = await house.visit(size);
      const { page } = visit;
      try {
        await openScreen(visit, LIMY, 'Settings');
        await page.getByRole('button', { name: 'Add a material' }).click();
        await page.getByLabel('What is it?').selectOption('quicklime');
        await page.getByText('caustic').waitFor();
        expect(await page.getByRole('button', { name: 'Save this material' }).count()).toBe(0);
        await page.getByLabel('What is it?').selectOption('calcitic-limestone');
        await page.getByLabel('Name on the bag').fill(`Lime for ${size}`);
        await page.getByRole('textbox', { name: 'CCE' }).fill('950');
        await page.getByLabel('Screen', { exact: true }).fill('60 mash');
        await page.getByRole('textbox', { name: 'Passes' }).fill('70');
        await page.getByRole('textbox', { name: 'Price of a bag' }).fill('9');
        await page.getByRole('button', { name: 'Save this material' }).click();
        await page.getByText('The most that is taken is 260 %.').waitFor();
        await page.getByText('Write it as 60 mesh or 0.25 mm.').waitFor();
        await page.getByText('A price belongs to a bag').waitFor();
        await look(visit, 'settings-material', size);
        await page.getByRole('textbox', { name: 'CCE' }).fill('95');
        await page.getByLabel('Screen', { exact: true }).fill('60 mesh');
        await page.getByRole('textbox', { name: 'Weight of a bag' }).fill('20');
        await page.getByRole('button', { name: 'Save this material' }).click();
        await page.getByText(`Lime for ${size} saved.`).waitFor();
        await page.getByText('bags of 20 kg at €9.00; figures of your label').waitFor();
        await page.getByRole('button', { name: 'Undo' }).click();
        await page.getByText('Taken back.').waitFor();
        expect(await page.getByText(`Lime for ${size}`, { exact: true }).count()).toBe(0);
        expect(visit.complaints).toEqual([]);
      } finally {
        await visit.leave();
      }
    });

    it('write the whole garden out as a file and read it in again', async () => {
      const visit = await house.visit(size);
      const { page } = visit;
      try {
        await openScreen(visit, LIMY, 'Settings');
        const [file] = await Promise.all([
          page.waitForEvent('download'),
          page.getByRole('button', { name: 'Save the garden as a file' }).click(),
        ]);
        const path = await file.path();
        expect(JSON.parse(readFileSync(path, 'utf8'))).toMatchObject({ sorrel: 'garden', version: 1 });
        await page.getByLabel('Read in a garden file').setInputFiles(path);
        await page.getByText('The file was read in.').waitFor();
        await page
          .getByLabel('Read in a garden file')
          .setInputFiles({ name: 'no.json', mimeType: 'application/json', buffer: Buffer.from('{"no":1}') });
        await page.getByText('This file could not be read in.').waitFor();
        // The browser itself notes a refused request; nothing else may be amiss.
        expect(visit.complaints.filter((each) => !each.includes('Failed to load resource'))).toEqual([]);
      } finally {
        await visit.leave();
      }
    });
  });
