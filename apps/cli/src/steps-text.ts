import { materialOf } from '@sorrel/almanac/materials';
import type { Application, Recommendation } from '@sorrel/engine/plan';
import { scoops, volumeOf } from '@sorrel/engine/units';
import { hanging, paragraph } from './layout.ts';
import { chanceText, day, type Speaker } from './speak.ts';
import { words } from './words.ts';

/** What to do: each step with its weight first, then scoops, rate, days and ways; the risk; the retest. */
export function stepsText(plan: Recommendation, speaker: Speaker): string {
  const { applications, retest, overshootChance } = plan;
  if (applications.length === 0 && retest === undefined) return '';
  const lines: string[] = [];
  const how = new Set<string>();
  for (const application of applications) {
    lines.push(paragraph(stepText(application, speaker), 4));
    const fresh = application.how.map(speaker.say).filter((each) => !how.has(each) && how.add(each));
    lines.push(...fresh.map((each) => hanging('- ', each, 6)));
  }
  if (overshootChance !== undefined && applications.length > 0)
    lines.push(paragraph(words.overshoot(chanceText(overshootChance)), 4));
  if (retest !== undefined)
    lines.push(
      paragraph(
        `${words.retest}: ${words.retestText(day(retest.earliest), day(retest.latest))} ${speaker.say(retest.why)}`,
        4,
      ),
    );
  return [`  ${words.doThis}`, ...lines].join('\n');
}

function stepText(step: Application, speaker: Speaker): string {
  const { product, perArea, perVolume } = step;
  const known = materialOf(product.material);
  const mark = known?.basis === 'memory' ? words.memoryMark : '';
  const rate =
    perArea === undefined ? speaker.amount(perVolume ?? 0, 'massPerVolume') : speaker.amount(perArea, 'massPerArea');
  const label = step.onlyIfRetest ? words.later(step.number) : words.step(step.number);
  const named = product.name + (product.currencyBasis === 'assumed' ? mark : '');
  return `${label}${words.of(speaker.weight(step.mass), named)}${scoopText(step, mark, speaker)}. ${words.per(rate)} ${words.between(day(step.earliest), day(step.latest))}`;
}

function scoopText({ product, mass }: Application, mark: string, speaker: Speaker): string {
  const { density } = product;
  if (density === undefined) return '';
  // The almanac's own density is as good as its row; one from the person's own scale is not from memory.
  const usual = materialOf(product.material)?.densityTypical === density / 1000;
  return words.scoops(scoops(volumeOf(mass, density), speaker.system) + (usual ? mark : ''));
}
