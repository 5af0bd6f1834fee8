import { recommend } from '@sorrel/engine/plan';
import type { Handout, HandoutOptions } from '@sorrel/print';
import { chromium } from 'playwright-core';
import { handoutContent } from '../packages/print/src/content/handout-content.ts';
import { qrSvg } from '../packages/print/src/content/qr.ts';
import { handouts } from '../packages/print/src/handouts.ts';
import { speakerFor } from '../packages/print/src/speaker.ts';
import { typeset } from '../packages/print/src/typeset/typeset.ts';
import { demoHandouts } from '../packages/print/testing/demo-gardens.ts';
import { readPdf } from '../packages/print/testing/read-pdf.ts';
import { browser } from '../scripts/browser.mjs';
import { flags } from './forecast-browser.ts';
import { type Content, htmlOf } from './handouts-html.ts';
import { plainDesign } from './handouts-plain.ts';
import { median, timed } from './measure.ts';

const options: HandoutOptions = { system: 'metric', printed: '2026-11-25', paper: 'a4' };
const settings = { today: '2026-10-20', overshootChance: 0.05, hemisphere: 'north', finenessSystem: 'OH' } as const;

/** So many samples to be limed, no two alike, and none like those of another round: nothing may come from a cache. */
export function handoutsOf(count: number, round: number): readonly Handout[] {
  const model = demoHandouts.find(({ recommendation }) => recommendation.decision === 'raise');
  if (model === undefined) throw new RangeError('no demo garden has a place to be limed');
  return Array.from({ length: count }, (_, index) => {
    const number = round * count + index;
    const code = `B${String(number).padStart(5, '0')}`;
    const place = {
      ...model.place,
      id: code,
      name: `Bed of number ${number}`,
      area: 4 + (number % 977) / 50,
      tests: model.place.tests.map((test) =>
        test.ph === undefined ? test : { ...test, ph: { ...test.ph, value: 4.9 + ((number * 37) % 400) / 1000 } },
      ),
    };
    const recommendation = recommend(
      place,
      model.recommendation.applications.map(({ product }) => product),
      settings,
      { explain: true },
    );
    const url = `https://garden.example/g/01890a5d-ac96-774b-bcce-b302099a8057/place/01890a5d-ac96-774b-bcce-b30209${code}`;
    return { place, recommendation, sampleId: code, person: `Person ${number}`, garden: 'Soil day at the mill', url };
  });
}

const contentsOf = (list: readonly Handout[]): readonly Content[] => {
  const speaker = speakerFor(options);
  return list.map(({ place, recommendation, ...extras }) => ({
    ...handoutContent(place, recommendation, extras, speaker),
    code: qrSvg(extras.url ?? ''),
  }));
};

/** The words of handouts without what only a browser needs. */
const wordsOf = (list: readonly Handout[]): object => ({
  size: 12,
  handouts: contentsOf(list).map(({ code: _, working: { shown }, ...each }) => ({ ...each, working: { shown } })),
});

/** The same words set by the typesetter as plain paragraphs on as many pages, and nothing drawn. */
const plain = (words: object): Uint8Array => typeset(plainDesign, words, { tagged: false });

const pagesOf = async (pdf: Uint8Array): Promise<number> => (await readPdf(pdf)).pages.length;

export interface HandoutTimes {
  readonly handouts: number;
  /** Milliseconds for all of them, and pages. */
  readonly ours: number;
  readonly pages: number;
  readonly plain: number;
  readonly plainPages: number;
  /** Ours by the typesetter's. */
  readonly toPlain: number;
  /** Undefined when no browser can be had. */
  readonly browser?: {
    /** Handouts that were printed; times are for all, page by page. */
    readonly printed: number;
    readonly together: number;
    readonly alone: number;
    /** A browser started for each person, as from a command line; measured on a few. */
    readonly started: number;
    readonly pages: number;
    readonly toTogether: number;
    readonly toAlone: number;
    readonly toStarted: number;
  };
}

/**
 * Handouts of a soil day in one file, against the typesetter with plain text and against Chromium printing pages of the
 * same words and pictures: all in one document, and a document a person.
 */
export async function benchHandouts(count = 300, printed = count, rounds = 3): Promise<HandoutTimes> {
  const ours: number[] = [];
  const bare: number[] = [];
  let round = 0;
  handouts(handoutsOf(10, 999), options);
  plain(wordsOf(handoutsOf(10, 998)));
  let pages = 0;
  let plainPages = 0;
  for (let turn = 0; turn < rounds; turn++) {
    const first = handoutsOf(count, round++);
    // Putting the words together is our own work, not the typesetter's.
    const second = wordsOf(handoutsOf(count, round++));
    let pdf = new Uint8Array();
    const we = async () => {
      ours.push(
        await timed(() => {
          pdf = new Uint8Array(handouts(first, options));
        }),
      );
    };
    let other = new Uint8Array();
    const they = async () => {
      bare.push(
        await timed(() => {
          other = new Uint8Array(plain(second));
        }),
      );
    };
    if (turn % 2 === 0) {
      await we();
      await they();
    } else {
      await they();
      await we();
    }
    if (turn === 0) [pages, plainPages] = [await pagesOf(pdf), await pagesOf(other)];
  }
  const toPlain = median(ours.map((time, at) => time / pages / ((bare[at] as number) / plainPages)));
  const times = { handouts: count, ours: median(ours), pages, plain: median(bare), plainPages, toPlain };
  const executablePath = await browser();
  if (executablePath === undefined) return times;
  // Ours before, between and after, so that the machine is as busy as it is with the browser.
  const again: number[] = [];
  const once = async () => {
    const list = handoutsOf(count, round++);
    again.push(await timed(() => handouts(list, options)));
  };
  const theirs = await inBrowser(executablePath, () => handoutsOf(printed, round++), once);
  const scale = count / printed;
  const own = median(again);
  return {
    ...times,
    browser: {
      printed,
      together: theirs.together * scale,
      alone: theirs.alone * scale,
      started: theirs.started * count,
      pages: theirs.pages,
      toTogether: (theirs.together * scale) / own,
      toAlone: (theirs.alone * scale) / own,
      toStarted: (theirs.started * count) / own,
    },
  };
}

async function inBrowser(executablePath: string, some: () => readonly Handout[], between: () => Promise<void>) {
  const opened = await chromium.launch({ executablePath, args: flags });
  try {
    const page = await opened.newPage();
    const print = async (html: string) => {
      await page.setContent(html);
      return new Uint8Array(await page.pdf({ format: 'A4', printBackground: true }));
    };
    await print(htmlOf(contentsOf(handoutsOf(3, 997))));
    await between();
    const whole = htmlOf(contentsOf(some()));
    let pdf = new Uint8Array();
    const together = await timed(async () => {
      pdf = new Uint8Array(await print(whole));
    });
    await between();
    const each = contentsOf(some()).map((one) => htmlOf([one]));
    const alone = await timed(async () => {
      for (const html of each) await print(html);
    });
    await between();
    const started = await startedEach(executablePath, each.slice(0, STARTED));
    return { together, alone, started, pages: await pagesOf(pdf) };
  } finally {
    await opened.close();
  }
}

/** Starting a browser takes long enough to be measured on so many. */
export const STARTED = 8;

/** Milliseconds a handout when a browser is started for it. */
async function startedEach(executablePath: string, pages: readonly string[]): Promise<number> {
  const whole = await timed(async () => {
    for (const html of pages) {
      const opened = await chromium.launch({ executablePath, args: flags });
      const page = await opened.newPage();
      await page.setContent(html);
      await page.pdf({ format: 'A4', printBackground: true });
      await opened.close();
    }
  });
  return whole / pages.length;
}
