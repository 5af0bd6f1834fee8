import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type House, openHouse, type Size, sizes } from './harness.ts';
import { look, openScreen } from './look.ts';

let house: House;
beforeAll(async () => {
  house = await openHouse();
});
afterAll(() => house.close());

const LIMY = 'Invented garden on limy clay';
const SOUR = 'Invented garden on sour ground';
const NEW = 'New bed, not tested yet';

for (const size of Object.keys(sizes) as Size[])
  describe(`a soil test at ${sizes[size].width} px`, () => {
    it('is typed as the paper reads, faults beside their field, changes the plan, is corrected and taken back', async () => {
      // Both sizes write into one garden, so each has a day of its own.
      const [day, shown] = size === 'phone' ? ['2026-10-09', '9 Oct 2026'] : ['2026-10-10', '10 Oct 2026'];
      const visit = await house.visit(size);
      const { page } = visit;
      try {
        await openScreen(visit, SOUR, 'Add a test');
        await look(visit, 'test', size);
        await page.getByLabel('Place', { exact: true }).selectOption({ label: NEW });
        await page.getByText('Buffer pH', { exact: true }).click();
        await page.getByText('CEC', { exact: true }).click();
        await page.getByRole('textbox', { name: 'pH', exact: true }).fill('52');
        await page.getByRole('textbox', { name: 'Buffer pH' }).fill('6,1');
        await page.getByRole('button', { name: 'Save this test' }).click();
        await page.getByText('Look for a lost decimal point').first().waitFor();
        await page.getByText('Which buffer is missing.').first().waitFor();
        expect(await page.getByRole('textbox', { name: 'pH', exact: true }).getAttribute('aria-invalid')).toBe('true');
        await page.getByText('Which one is it?').first().click();
        await look(visit, 'test-faults', size);
        await page.getByRole('textbox', { name: 'pH', exact: true }).fill('5.2');
        await page.getByLabel('Which buffer').selectOption('sikora');
        await page.getByRole('textbox', { name: 'CEC' }).fill('14');
        await page.getByLabel('Day of the sample').fill(day);
        await page.getByRole('button', { name: 'Save this test' }).click();
        await page.getByText(`Test of ${NEW} saved`).waitFor();
        await page.getByRole('heading', { level: 1, name: NEW }).waitFor();
        // Nobody knew its pH before: now it is too sour, and lime is what is asked for.
        await page
          .getByText(/(lb|oz|kg) of .*lime/i)
          .filter({ visible: true })
          .first()
          .waitFor();

        await page.getByRole('button', { name: 'Close' }).click();
        await page
          .getByRole('navigation', { name: 'Screens of this garden' })
          .getByRole('link', { name: 'Add a test' })
          .click();
        await page.getByLabel('Place', { exact: true }).selectOption({ label: NEW });
        await page.getByRole('listitem').filter({ hasText: shown }).getByRole('link', { name: 'Correct' }).click();
        await page.getByRole('heading', { level: 1, name: 'Correct a test' }).waitFor();
        expect(await page.getByRole('textbox', { name: 'pH', exact: true }).inputValue()).toBe('5.2');
        await page.getByRole('textbox', { name: 'pH', exact: true }).fill('6.5');
        await page.getByRole('button', { name: 'Save the correction' }).click();
        await page.getByText('The first writing stays in the record').waitFor();
        await page.getByRole('button', { name: 'Undo' }).click();
        await page.getByText('Taken back.').waitFor();
        await page
          .getByText(/(lb|oz|kg) of .*lime/i)
          .filter({ visible: true })
          .first()
          .waitFor();
        expect(visit.complaints).toEqual([]);
      } finally {
        await visit.leave();
      }
    });

    it('comes in as a table: good rows are added, bad ones told by line and reason, known ones left out', async () => {
      const visit = await house.visit(size);
      const { page } = visit;
      try {
        await openScreen(visit, 'Invented garden on sour ground', 'Add a test');
        await page.getByText('Paste a table', { exact: true }).click();
        await page
          .getByLabel('Table, with its headings in the first line')
          .fill(
            [
              'place\tdate\tph\tbuffer_ph\tbuffer\tom\tcolour',
              'Potato bed\t2026-10-01\t5,6\t6.4\tsikora\t4\t',
              `Pasted bed ${size}\t2026-10-01\t4.9\t6.0\tsikora\t4\tred`,
              'Lost point\t2026-10-01\t56\t6.4\tsikora\t4\t',
              'Short row\t2026-10-01\t6',
              'Ahead\t2031-10-01\t6\t\t\t\t',
            ].join('\n'),
          );
        await page.getByText('3 rows cannot be used').waitFor();
        await page.getByText('Line 4, Lost point').waitFor();
        await page.getByText('Line 5, Short row').waitFor();
        await page.getByText('Line 6, Ahead').waitFor();
        await page.getByText('Headings nobody knows').waitFor();
        await page.getByRole('cell', { name: 'is added, with a new place' }).waitFor();
        await look(visit, 'test-table', size);
        await page.getByRole('button', { name: 'Add 2 tests' }).click();
        await page.getByText('2 tests added').waitFor();
        await page
          .getByRole('link', { name: new RegExp(`Pasted bed ${size}`) })
          .first()
          .waitFor();
        await page.getByRole('button', { name: 'Undo' }).click();
        await page.getByText('Taken back.').waitFor();
        expect(await page.getByRole('link', { name: new RegExp(`Pasted bed ${size}`) }).count()).toBe(0);
        expect(visit.complaints).toEqual([]);
      } finally {
        await visit.leave();
      }
    });
  });

it('can be added with the keyboard alone', async () => {
  const visit = await house.visit('desk');
  const { page } = visit;
  try {
    await openScreen(visit, LIMY, 'Add a test');
    const { keyboard } = page;
    const tabTo = async (name: string) => {
      for (let press = 0; press < 80; press++) {
        const at = await page.evaluate(() => {
          const here = document.activeElement as HTMLInputElement | null;
          return here?.labels?.[0]?.textContent?.trim() ?? here?.textContent?.trim() ?? '';
        });
        if (at === name) return;
        await keyboard.press('Tab');
      }
      throw new Error(`The keyboard never comes to ${name}.`);
    };
    await tabTo('Place');
    await keyboard.type('Beans');
    await tabTo('Organic matter (OM)');
    await keyboard.press('Space');
    await tabTo('pH in what');
    await keyboard.press('Shift+Tab');
    await keyboard.type('6.4');
    await tabTo('pH in what');
    await keyboard.type('Calcium');
    await keyboard.press('Tab');
    await tabTo('Organic matter (OM)');
    await keyboard.type('4.1');
    await tabTo('Save this test');
    await keyboard.press('Enter');
    await page.getByText('Test of Beans and cabbage saved').waitFor();
    expect(visit.complaints).toEqual([]);
  } finally {
    await visit.leave();
  }
});
