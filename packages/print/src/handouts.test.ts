import { en } from '@sorrel/almanac/words';
import { say, weight } from '@sorrel/engine/units';
import { describe, expect, it } from 'vitest';
import { demoHandouts, demoPlace } from '../testing/demo-gardens.ts';
import { type ReadPage, readPdf } from '../testing/read-pdf.ts';
import { handout, handouts, type Paper } from './index.ts';

const us = { system: 'us', printed: '2026-10-20' } as const;
const bed = demoPlace('Long vegetable bed');
const words = (pages: readonly ReadPage[]): string => pages.map((page) => page.text).join(' ');
/** Line ends may fall at any space, and the reader puts none between columns. */
const squeezed = (text: string): string => text.replace(/\s+/g, '');

describe('a handout', () => {
  it('holds what the practice note says a handout must hold, weight before scoop', async () => {
    const { pages, title } = await readPdf(
      handout(bed.place, bed.recommendation, {
        ...us,
        garden: 'Garden of Åse Ørsted',
        sampleId: 'K-17',
        contact: 'M. Quill',
      }),
    );
    expect(title).toBe('Soil pH of Long vegetable bed');
    const text = words(pages);
    for (const part of [
      'Garden of Åse Ørsted',
      'K-17',
      '20 Oct 2026',
      'today 5.3',
      'pH 5.3 in water, 1:1, Invented laboratory A, 14 Sep 2026',
      'pH 6.0 to 6.8, aim 6.4',
      'Tomato, Carrot, Cabbage and Onion (bulb)',
      'ground calcitic lime, 50 lb bag',
      'neutralizes like 95%',
      'Step 2: only if a retest still asks for it',
      'Safety first',
      'Do not add',
      'Test again',
      'Who to ask',
      'First of all: M. Quill',
      'How the figures came about',
      'OSU-EM9585',
      'From memory',
    ])
      expect(squeezed(text)).toContain(squeezed(part));
    const weighed = text.indexOf(weight(bed.recommendation.applications[0]?.mass ?? 0, 'us', 'down'));
    expect(weighed).toBeGreaterThan(0);
    expect(text.indexOf('cups*')).toBeGreaterThan(weighed);
  });

  it('carries every caution, reason, question and do-not of every demo place', async () => {
    const { pages } = await readPdf(handouts(demoHandouts, us));
    const text = squeezed(words(pages));
    for (const { recommendation } of demoHandouts) {
      const { reasons, cautions, ask, notes } = recommendation;
      for (const message of [...reasons, ...cautions, ...ask, ...notes])
        expect(text).toContain(squeezed(say(message, 'us')));
    }
  });

  for (const paper of ['a4', 'us-letter'] satisfies Paper[])
    for (const system of ['metric', 'us'] as const)
      it(`takes one or two pages of ${paper} for every demo place in ${system} units`, async () => {
        const { pages } = await readPdf(handouts(demoHandouts, { ...us, system, paper }));
        const numbers = pages.map((page) => Number(/Page\s+(\d+)/.exec(page.text)?.[1]));
        expect(numbers.filter((number) => number === 1)).toHaveLength(demoHandouts.length);
        expect(Math.max(...numbers)).toBe(2);
        // ISO 216 and ANSI Y14.1, in points.
        const [width = 0, height = 0] = pages[0]?.size ?? [];
        expect(width).toBeCloseTo(paper === 'a4' ? 595.28 : 612, 1);
        expect(height).toBeCloseTo(paper === 'a4' ? 841.89 : 792, 1);
      });

  it('sets the body in 12 pt, and in 18 pt for weak eyes', async () => {
    for (const [largePrint, size] of [
      [false, 12],
      [true, 18],
    ] as const) {
      const { pages } = await readPdf(handout(bed.place, bed.recommendation, { ...us, largePrint }));
      const pieces = pages.flatMap((page) => page.pieces);
      for (const start of ['Wear gloves', 'Mix it into', 'No sulfur', 'The laboratory that'])
        expect(pieces.find((piece) => piece.text.startsWith(start))?.size).toBeCloseTo(size, 3);
      // Nothing, not even the working, is smaller than the small print of a bag.
      expect(
        Math.min(...pieces.filter((piece) => piece.text.trim() !== '').map((piece) => piece.size)),
      ).toBeGreaterThan(6);
    }
  });

  it('keeps the safety box whole on one page', async () => {
    const { pages } = await readPdf(handout(bed.place, bed.recommendation, us));
    const page = squeezed(pages.find(({ text }) => text.includes('Safety first'))?.text ?? '');
    for (const caution of bed.recommendation.cautions) expect(page).toContain(squeezed(say(caution, 'us')));
  });

  it('gives the same bytes for the same plan', () => {
    const print = () => handout(bed.place, bed.recommendation, us);
    expect(Buffer.compare(print(), print())).toBe(0);
  });

  it('speaks metric, and another language, when asked', async () => {
    const catalogue = { ...en, 'print.decision-raise': 'Erhöhe den pH-Wert' };
    const { pages } = await readPdf(
      handout(bed.place, bed.recommendation, { ...us, system: 'metric', catalogue, language: 'de' }),
    );
    expect(squeezed(words(pages))).toContain('ErhöhedenpH-Wert');
    const mass = bed.recommendation.applications[0]?.mass ?? 0;
    expect(words(pages)).toContain(weight(mass, 'metric', 'down'));
    expect(words(pages)).not.toContain(weight(mass, 'us', 'down'));
  });

  it('prints every step of the working when asked, with formula and values', async () => {
    const { pages } = await readPdf(handout(bed.place, bed.recommendation, { ...us, everyStep: true }));
    const text = squeezed(words(pages));
    expect(text).toContain(squeezed('Updated lime requirement recommendations for Oregon'));
    for (const step of bed.recommendation.derivation?.steps ?? []) expect(text).toContain(squeezed(step.formula));
    expect(bed.recommendation.derivation?.steps.length).toBeGreaterThan(10);
  });

  it('takes two pages however long the working grows, and says what is left out', async () => {
    const steps = bed.recommendation.derivation?.steps ?? [];
    const many = Array.from({ length: 8 }, () => steps)
      .flat()
      .map((step, index) => ({ ...step, index }));
    const { pages } = await readPdf(handout(bed.place, { ...bed.recommendation, derivation: { steps: many } }, us));
    expect(pages).toHaveLength(2);
    expect(words(pages)).toContain(`Figures 1 to ${many.length - 26} lead up to these.`);
  });

  it('names the publications of a short working', async () => {
    const { place, recommendation } = demoPlace('Squash and corn plot');
    const { pages } = await readPdf(handout(place, recommendation, us));
    expect(words(pages)).toContain('Sources in full');
  });

  it('offers no dose, and says so, where nothing is to be spread', async () => {
    const { place, recommendation } = demoPlace('Potato bed');
    const { pages } = await readPdf(handout(place, recommendation, us));
    expect(words(pages)).toContain('Leave it alone');
    expect(words(pages)).not.toContain('What to do');
    expect(squeezed(words(pages))).toContain(squeezed('No lime or ash “just in case”.'));
  });
});
