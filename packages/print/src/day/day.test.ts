import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import { demoHandouts } from '../../testing/demo-gardens.ts';
import { readPdf } from '../../testing/read-pdf.ts';
import { qrPicture } from '../content/qr-picture.ts';
import { anonymousTable, type DayOptions, daySummary, handouts, mergeTable } from '../index.ts';
import type { DaySample } from './day-sample.ts';

const options: DayOptions = { system: 'metric', printed: '2026-11-25', title: 'Soil day at the old mill' };
const urlOf = (code: string) =>
  `https://garden.example/g/01890a5d-ac96-774b-bcce-b302099a8057/place/01890a5d-ac96-774b-bcce-b302099a${code}`;
const samples: readonly DaySample[] = demoHandouts.map(({ place, recommendation }, index) => ({
  code: `A${100 + index}`,
  person: index % 2 === 0 ? `Anna${index}` : `=Bert${index}`,
  ...(index % 3 === 0 ? {} : { neighbourhood: index < 9 ? 'Mill side' : 'Hill' }),
  place,
  plan: recommendation,
}));
const personal = samples.map(({ code, person = '', place, plan }) => ({
  place,
  recommendation: plan,
  sampleId: code,
  person,
  garden: options.title,
  url: urlOf(code),
}));

describe('a personal handout', () => {
  it.each(['metric', 'us'] as const)(
    'takes one or two pages and begins with its code and person, %s',
    async (system) => {
      const { pages } = await readPdf(handouts(personal, { ...options, system }));
      const starts = pages.flatMap(({ text }, index) => (text.includes('Page 1') ? [index] : []));
      expect(starts).toHaveLength(personal.length);
      for (const [index, start] of starts.entries()) {
        const { sampleId, person, recommendation } = personal[index] as (typeof personal)[number];
        const end = starts[index + 1] ?? pages.length;
        expect(end - start).toBeLessThanOrEqual(2);
        // Two sheets that came apart are put together again by the code.
        for (const page of pages.slice(start, end)) expect(page.text).toContain(`${sampleId} · ${person}`);
        const text = pages
          .slice(start, end)
          .map((page) => page.text)
          .join(' ');
        // What can hurt stays on the page, whatever else has to give way.
        if (recommendation.cautions.length > 0) expect(text).toContain('Safety first');
        if (recommendation.retest !== undefined) expect(text).toContain('Test again');
      }
    },
  );

  it('carries a code that a reader with no part in writing it can read', async () => {
    const wasm = readFileSync(createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm'));
    await prepareZXingModule({
      overrides: { wasmBinary: wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.length) },
      fireImmediately: true,
    });
    const png = qrPicture(urlOf('A100'));
    const [read] = await readBarcodes(new Blob([new Uint8Array(png)]), { formats: ['QRCode'], isPure: true });
    expect(read?.text).toBe(urlOf('A100'));
  });
});

describe('the summary of a day', () => {
  it('tells the distribution, who to call and what to buy', async () => {
    const sick = samples.map(
      (sample, index): DaySample =>
        index === 4
          ? { ...sample, plan: { ...sample.plan, cautions: [{ code: 'plan.caution-refer-extreme', parameters: {} }] } }
          : sample,
    );
    const text = (await readPdf(daySummary(sick, options))).pages.map((page) => page.text).join(' ');
    expect(text).toContain(`${samples.length} samples`);
    for (const name of ['Mill side', 'Hill', 'not said', 'What to buy together']) expect(text).toContain(name);
    expect(text).toContain('A104');
    expect(text).not.toContain('A105');
  });

  it('stands without samples', async () => {
    const { pages } = await readPdf(daySummary([], options));
    expect(pages[0]?.text).toContain('Nobody has to be called');
  });
});

describe('the tables of a day', () => {
  // RFC 4180, read by a parser with no part in writing it.
  const rows = parse(mergeTable(samples, options), { columns: true }) as Record<string, string>[];
  it('have a row a sample in check-in order, with its cautions', () => {
    expect(rows.map(({ code }) => code)).toEqual(samples.map(({ code }) => code));
    for (const [index, row] of rows.entries()) {
      const { plan } = samples[index] as DaySample;
      const first = plan.applications.find(({ onlyIfRetest }) => !onlyIfRetest);
      expect(row.mass === '').toBe(first === undefined);
      // Never more than the plan gives.
      if (first !== undefined) expect(Number(row.mass)).toBeLessThanOrEqual(first.mass + 1e-9);
      expect(row.cautions === '').toBe(plan.cautions.length === 0);
    }
  });
  it('run no formula of a stranger in a spreadsheet', () => {
    expect(rows[1]?.person).toBe("'=Bert1");
  });
  it('name nobody in what is given to others', () => {
    const text = anonymousTable(samples);
    expect(parse(text, { columns: true })).toHaveLength(samples.length);
    expect(text).not.toMatch(/Anna|Bert|A1\d\d/);
  });
});
