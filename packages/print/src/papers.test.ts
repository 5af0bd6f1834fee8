import { findAnyPlant, halfKnownPlants } from '@sorrel/almanac/half-known-plants';
import { plants } from '@sorrel/almanac/plants';
import { en } from '@sorrel/almanac/words';
import { placeNutrients } from '@sorrel/engine/nutrients';
import { PLACE_VERDICTS } from '@sorrel/engine/placing';
import { say } from '@sorrel/engine/units';
import { describe, expect, it } from 'vitest';
import { demoGardens, demoHandouts, demoPlace, planned } from '../testing/demo-gardens.ts';
import { type ReadPage, readPdf } from '../testing/read-pdf.ts';
import { plantContent } from './content/plant-content.ts';
import { symptomsContent } from './content/symptoms-content.ts';
import { plantPage, symptomsPage, usablePages } from './index.ts';
import { speakerFor } from './speaker.ts';

const us = { system: 'us', printed: '2026-10-20' } as const;
const squeezed = (text: string): string => text.replace(/\s+/g, '');
const words = (pages: readonly ReadPage[]): string => squeezed(pages.map((page) => page.text).join(' '));
const sour = planned('sour-ground-heavy-rain');
const row = (name: string) => {
  const found = findAnyPlant(name);
  if (found === undefined) throw new RangeError(name);
  return found;
};

describe('the page of a plant', () => {
  it('holds its range, every place with the verdict and why, its diseases, and who says so', async () => {
    const { pages, title } = await readPdf(plantPage(row('cabbage'), sour.garden, sour.plan, us));
    expect(title).toBe('Cabbage: the pH it wants');
    const text = words(pages);
    for (const { name } of sour.garden.places) expect(text).toContain(squeezed(name));
    for (const part of [
      'after the plan',
      'Clubroot is held down above pH 7.2',
      'fao-crop-db',
      'Keep apart',
      'From memory',
    ])
      expect(text).toContain(squeezed(part));
  });
  it('says of a plant with a range for pots alone that it tells nothing of the ground', async () => {
    const { pages } = await readPdf(plantPage(row('calibrachoa'), sour.garden, sour.plan, us));
    expect(words(pages)).toContain(squeezed('In a potting mix at its best from pH 5.4 to 6.2.'));
    expect(words(pages)).toContain(squeezed('It tells nothing of the ground.'));
  });
  it('can be written for every plant of the almanac in every demo garden, without a gap in a sentence', () => {
    const speaker = speakerFor(us);
    for (const { garden, plan } of demoGardens)
      for (const plant of [...plants, ...halfKnownPlants]) {
        const text = JSON.stringify(plantContent(plant, garden, plan, speaker));
        expect(text, plant.name).not.toMatch(/\{\w+\}|undefined|NaN/);
      }
  });
  it('has words for every verdict', () => {
    for (const verdict of PLACE_VERDICTS)
      expect(Object.keys(en)).toContain(`print.plant-fit-${verdict.replaceAll(' ', '-')}`);
  });
});

describe('what is usable, on paper', () => {
  it('never leaves a locked nutrient without saying that more of it will not help', async () => {
    const bed = demoPlace('Long vegetable bed');
    const place = {
      ...bed.place,
      tests: bed.place.tests.map((test) => ({
        ...test,
        // 120 lb/acre of phosphorus by Mehlich-3 is enough (njaes-levels); at pH 5.3 it counts as locked.
        nutrients: [{ nutrient: 'P', value: 60e-6, extractant: 'mehlich-3' as const }],
      })),
    };
    const { pages } = await readPdf(usablePages([{ place, recommendation: bed.recommendation }], us));
    const text = words(pages);
    expect(text).toContain(squeezed('enough but LOCKED'));
    expect(text).toContain(squeezed('More phosphorus in the soil will not help'));
  });
  it('carries every sentence of every demo place, the critique of the chart among them', async () => {
    for (const { place, recommendation } of demoHandouts.slice(0, 4)) {
      const { pages } = await readPdf(usablePages([{ place, recommendation }], us));
      const text = words(pages);
      if (recommendation.present === undefined) {
        expect(text).toContain(squeezed('The pH of this place is not known'));
        continue;
      }
      for (const message of placeNutrients(place, recommendation.present.mean).messages)
        expect(text).toContain(squeezed(say(message, 'us')));
      expect(text).toContain(squeezed('The first chart, of 1936'));
    }
  });
});

describe('what was seen on a sick plant, on paper', () => {
  const seen = {
    answers: { leaves: 'young', pattern: 'between-veins' },
    evidence: { ph: 7.4, crop: 'blueberry' },
    place: 'Blueberry row',
    date: '2026-10-18',
    weeds: ['Dandelion'],
    note: 'By the wall #panic()',
  } as const;
  it('holds the answers, the causes with rough chances, the next look, and the cautions, on one page', async () => {
    const { pages } = await readPdf(symptomsPage(seen, us));
    const text = words(pages);
    for (const part of [
      'pale between green veins',
      'Too little iron, or iron locked up',
      'Are there dead spots in the leaves?',
      'Buy nothing on a look alone.',
      'Dandelion grows from pH 4.5 to 8.3. It tells nothing.',
      '18 Oct 2026',
      '#panic()',
    ])
      expect(text).toContain(squeezed(part));
    expect(pages).toHaveLength(1);
  });
  it('shares out all of the doubt among the causes that are shown', () => {
    const sheet = symptomsContent(seen, speakerFor(us));
    const chances = sheet.first.flatMap((part) => part.chances ?? []);
    expect(chances.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
  });
});
