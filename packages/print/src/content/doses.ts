import { materialOf } from '@sorrel/almanac/materials';
import type { Product } from '@sorrel/engine/materials';
import type { Application, Recommendation } from '@sorrel/engine/plan';
import { scoops, unitOf, volumeOf, weighable } from '@sorrel/engine/units';
import { once, type Speaker } from '../speaker.ts';

/** One dressing in words: the weight first, the scoop after it. */
export interface Dose {
  readonly step: string;
  readonly later: boolean;
  readonly product: string;
  /** Only at the first dose of a product. */
  readonly grade: string;
  readonly weigh: string;
  readonly scoop: string;
  readonly rate: string;
  readonly when: string;
  /** How it is put down, only what no earlier dose of the place has said. */
  readonly how: readonly string[];
}

/** The dressings of a place in order. */
export function dosesOf(advice: Recommendation, speaker: Speaker): Dose[] {
  const said = new Set<string>();
  const graded = new Set<Product>();
  return advice.applications.map((application) => ({
    step: speaker.word(application.onlyIfRetest ? 'print.step-later' : 'print.step', { number: application.number }),
    later: application.onlyIfRetest,
    product: application.product.name,
    grade: graded.has(application.product)
      ? ''
      : graded.add(application.product) && grade(application.product, speaker),
    weigh: speaker.weight(application.mass),
    scoop: scoop(application, speaker),
    rate:
      application.perArea === undefined
        ? speaker.word('print.rate-mix', { rate: speaker.amount(application.perVolume ?? 0, 'massPerVolume') })
        : speaker.word('print.rate', { rate: speaker.amount(application.perArea, 'massPerArea') }),
    when: speaker.days(application.earliest, application.latest),
    how: once(speaker, application.how, said),
  }));
}

/** A volume near the weight, never above it; its mark says that the density is from memory. */
function scoop({ product, mass }: Application, speaker: Speaker): string {
  const { density } = product;
  if (density === undefined || !(density > 0)) return speaker.word('print.no-scoop');
  const row = materialOf(product.material);
  // The almanac's own density is as good as its row; one from the person's own scale is not from memory.
  const remembered = row?.densityTypical === density / 1000 && row.basis === 'memory';
  const volume = volumeOf(weighable(mass, speaker.system, 'down'), density);
  return (
    speaker.word('print.about-scoop', { scoop: scoops(volume, speaker.system, 'down') }) +
    (remembered ? speaker.word('print.memory-mark') : '')
  );
}

/** What the label says of a product's strength, and whether it is the label that says it. */
export function grade(product: Product, speaker: Speaker): string {
  const assumed = product.currencyBasis === 'assumed';
  const mark = assumed && materialOf(product.material)?.basis === 'memory' ? speaker.word('print.memory-mark') : '';
  const basis = speaker.word(assumed ? 'print.basis-assumed' : 'print.basis-label') + mark;
  if (product.currency < 0) {
    const pound = unitOf('lb').factor;
    const each = speaker.system === 'us' ? pound : 1;
    return speaker.word(speaker.system === 'us' ? 'print.grade-acid-us' : 'print.grade-acid', {
      currency: speaker.rough(-product.currency * each, 'mass'),
      basis,
    });
  }
  const share = speaker.share(product.currency);
  if (product.efficiencyBasis === 'not applicable') return speaker.word('print.grade-lime-plain', { share, basis });
  return speaker.word('print.grade-lime', {
    share,
    basis,
    fineness: speaker.share(product.efficiency),
    finenessBasis: speaker.word(`print.basis-${product.efficiencyBasis}`),
  });
}
