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

for (const size of Object.keys(sizes) as Size[])
  describe(`work at ${sizes[size].width} px`, () => {
    it('is ticked off with the amount really used, is then not asked for again, and is taken back', async () => {
      const visit = await house.visit(size);
      const { page } = visit;
      try {
        await openScreen(visit, SOUR, 'Work');
        await look(visit, 'work', size);
        const week = page.getByRole('region', { name: 'This week' });
        const job = week.getByRole('listitem').filter({ has: page.getByRole('link', { name: 'Long vegetable bed' }) });
        await job.getByRole('button', { name: 'Done…' }).click();
        const amount = job.getByRole('textbox', { name: 'Amount for the whole place' });
        await amount.fill('');
        await job.getByRole('button', { name: 'Tick it off' }).click();
        expect(await amount.getAttribute('aria-invalid')).toBe('true');
        await amount.fill('7.5');
        await job.getByRole('button', { name: 'Tick it off' }).click();
        await page.getByText('Long vegetable bed: 7.5 lb').waitFor();
        // Of the 15 lb in the shed.
        await page.getByText('7.5 lb left on hand').waitFor();
        // What was spread stands in the record, and nothing more is to be spread before the retest.
        await page.getByText('7.5 lb of ground calcitic lime', { exact: false }).last().waitFor();
        await job.waitFor({ state: 'detached' });
        await page.getByRole('button', { name: 'Undo' }).click();
        await page.getByText('Taken back.').waitFor();
        await job.waitFor();
        await page.getByText('Nothing has been ticked off yet.').waitFor();
        await page.getByRole('region', { name: 'Shopping list' }).getByText('15 lb on hand').waitFor();
        // Ticked off once more and taken back from the list of what is done, the bag is as full as before.
        await job.getByRole('button', { name: 'Done…' }).click();
        await amount.fill('2');
        await job.getByRole('button', { name: 'Tick it off' }).click();
        await page.getByText('13 lb left on hand').waitFor();
        await page.getByRole('button', { name: 'Take back' }).click();
        await page.getByText('15 lb of ground calcitic lime, 50 lb bag on hand').waitFor();
        expect(visit.complaints).toEqual([]);
      } finally {
        await visit.leave();
      }
    });

    it('is bought in whole bags with a rough cost, and goes into a calendar', async () => {
      const visit = await house.visit(size);
      const { page } = visit;
      try {
        await openScreen(visit, SOUR, 'Work');
        const shopping = page.getByRole('region', { name: 'Shopping list' });
        await shopping.getByText(/\d bags? of 50 lb/).waitFor();
        await shopping.getByText('$8.00').waitFor();
        await shopping.getByText(/Together about \$\d+\.00/).waitFor();
        const [file] = await Promise.all([
          page.waitForEvent('download'),
          page.getByRole('button', { name: 'Download the calendar file' }).click(),
        ]);
        expect(file.suggestedFilename()).toBe('invented-garden-on-sour-ground.ics');
        const text = readFileSync(await file.path(), 'utf8');
        // RFC 5545: begins and ends a calendar, lines end in CRLF, whole days are dates.
        expect(text.startsWith('BEGIN:VCALENDAR\r\n')).toBe(true);
        expect(text).toContain('DTSTART;VALUE=DATE:');
        expect(text.replace(/\r\n /g, '')).toMatch(/SUMMARY:.*Long vegetable bed/);
        expect(visit.complaints).toEqual([]);
      } finally {
        await visit.leave();
      }
    });

    it('goes onto paper: a sheet, a handout for each place, labels that lead to the place', async () => {
      const visit = await house.visit(size);
      const { page } = visit;
      try {
        await openScreen(visit, SOUR, 'Print');
        await page.getByRole('heading', { name: `Work sheet: ${SOUR}` }).waitFor();
        await look(visit, 'print-work-sheet', size);
        await page.getByText('Handouts', { exact: true }).click();
        await page.getByLabel('Places').selectOption({ label: 'Potato bed' });
        await page.getByRole('heading', { level: 2, name: 'Potato bed' }).waitFor();
        expect(await page.getByRole('article').count()).toBe(1);
        await look(visit, 'print-handout', size);
        await page.getByText('Bed labels', { exact: true }).click();
        await page.getByRole('img', { name: 'Code that leads to Potato bed' }).waitFor();
        await look(visit, 'print-labels', size);
        await page.emulateMedia({ media: 'print' });
        expect(await page.getByRole('heading', { level: 1 }).isVisible()).toBe(false);
        expect(visit.complaints).toEqual([]);
      } finally {
        await visit.leave();
      }
    });
  });
