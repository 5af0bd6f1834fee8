import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type House, openHouse, type Size, sizes } from './harness.ts';
import { look, openScreen } from './look.ts';

let house: House;
beforeAll(async () => {
  house = await openHouse();
});
afterAll(() => house.close());

const SOUR = 'Invented garden on sour ground';

for (const size of Object.keys(sizes) as Size[])
  describe(`at ${sizes[size].width} px`, () => {
    it('searches a plant by the keyboard, shows its range, its sources, and which places suit it', async () => {
      const visit = await house.visit(size);
      const { page } = visit;
      await openScreen(visit, SOUR, 'Plants');
      await page.getByRole('heading', { name: 'In this garden' }).waitFor();
      await look(visit, 'plants', size);
      await page.getByLabel('Name of a plant').focus();
      await page.keyboard.type('brassica oleracea (capi');
      await page.getByRole('heading', { name: '1 plant' }).waitFor();
      const cabbage = page.getByRole('link', { name: /^Cabbage/ });
      await cabbage.focus();
      await page.keyboard.press('Enter');
      await page.getByRole('heading', { level: 1, name: 'Cabbage' }).waitFor();
      await page.getByText('At its best from pH 6.0 to 7.2 in the ground.').waitFor();
      await page.getByText('Clubroot is held down above pH 7.2').waitFor();
      // Citations are one tap away.
      await page.getByText('Every publication that was read or remembered').click();
      await page.getByText('fao-crop-db', { exact: true }).first().click();
      await page.getByText('Crop environmental requirements database').first().waitFor();
      expect(await page.getByText('from memory').count()).toBeGreaterThan(0);
      // Which places suit it, today and after the plan, and why not.
      const blueberries = page.getByRole('listitem').filter({ has: page.getByRole('link', { name: 'Blueberry row' }) });
      expect(await blueberries.textContent()).toContain('Does not suit it');
      expect(await blueberries.textContent()).toContain('Keep Blueberry, highbush and Cabbage apart');
      const long = page.getByRole('listitem').filter({ has: page.getByRole('link', { name: 'Long vegetable bed' }) });
      expect(await long.textContent()).toMatch(/Suits it after the plan.*The plan leads to pH/);
      expect(await long.textContent()).toContain('Grows here');
      await look(visit, 'plant', size);
      await visit.leave();
    });

    it('adds a plant to a place, and takes it back', async () => {
      const visit = await house.visit(size);
      const { page } = visit;
      await openScreen(visit, SOUR, 'Plants');
      await page.getByLabel('Name of a plant').fill('radish');
      await page.getByRole('link', { name: /^Radish/ }).click();
      await page.getByRole('button', { name: 'Add to Potato bed' }).click();
      await page.getByText('Radish added to Potato bed.').waitFor();
      await expect.poll(() => page.getByRole('button', { name: 'Add to Potato bed' }).count()).toBe(0);
      await page.getByRole('button', { name: 'Undo' }).click();
      await page.getByRole('button', { name: 'Add to Potato bed' }).waitFor();
      expect(visit.complaints).toEqual([]);
      await visit.leave();
    });

    it('finds a plant that is known in pots alone, and never gives that range to a bed', async () => {
      const visit = await house.visit(size);
      const { page } = visit;
      await openScreen(visit, 'Invented rooftop of containers', 'Plants');
      await page.getByLabel('Name of a plant').fill('million bells');
      await page.getByRole('link', { name: /^Calibrachoa/ }).click();
      await page.getByText('Only a range for potting mixes is published').first().waitFor();
      await page.getByText('In a potting mix it is at its best from pH 5.4 to 6.2.').waitFor();
      await page
        .getByRole('button', { name: /^Add to / })
        .first()
        .waitFor();
      await look(visit, 'plant-pots', size);
      await page.goto(house.url);
      await openScreen(visit, SOUR, 'Plants');
      await page.getByLabel('Name of a plant').fill('calibrachoa');
      await page.getByRole('link', { name: /^Calibrachoa/ }).click();
      await page.getByRole('heading', { level: 1, name: 'Calibrachoa' }).waitFor();
      expect(await page.getByRole('button', { name: /^Add to / }).count()).toBe(0);
      await page.getByLabel('Name of a plant').count();
      await visit.leave();
    });

    it('teaches where there is nothing yet, and says when it only guesses a name', async () => {
      const visit = await house.visit(size);
      const { page } = visit;
      await page.getByLabel('Name of the garden').fill(`Bare ${size}`);
      await page.getByRole('button', { name: 'Start this garden' }).click();
      await page.getByRole('heading', { name: 'Add a place' }).waitFor();
      await page
        .getByRole('navigation', { name: 'Screens of this garden' })
        .getByRole('link', { name: 'Plants' })
        .click();
      await page.getByText('Add a place first').waitFor();
      await page.getByLabel('Name of a plant').fill('rasberry');
      await page.getByText('Did you mean one of these?').waitFor();
      await page
        .getByRole('link', { name: /^Raspberry/ })
        .first()
        .waitFor();
      await page.getByLabel('Name of a plant').fill('xyzzyx');
      await page.getByText('No plant is called that. Try its Latin name').waitFor();
      await visit.leave();
    });

    it('shows what plants can use: the picture, the words beside it, and how far to trust it', async () => {
      const visit = await house.visit(size);
      const { page } = visit;
      await page.getByRole('link', { name: SOUR }).click();
      await page.locator('ol').last().getByRole('link', { name: 'Long vegetable bed' }).click();
      await page.getByRole('link', { name: 'What plants can use' }).click();
      await page.getByRole('heading', { level: 1, name: 'What plants can use in Long vegetable bed' }).waitFor();
      await page.getByText(/pH today: 5\.\d/).waitFor();
      await page.getByText('molybdenum', { exact: true }).first().waitFor();
      await page.getByText('The first chart, of 1936').waitFor();
      await page.getByText('The picture as a table').click();
      await page.getByRole('row', { name: /phosphorus/ }).waitFor();
      await look(visit, 'usable', size);
      await visit.leave();
    });
  });
