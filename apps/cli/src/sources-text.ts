import { cite } from '@sorrel/almanac/sources';
import type { Recommendation } from '@sorrel/engine/plan';
import { citedIn } from './derivation-text.ts';
import { hanging } from './layout.ts';
import { words } from './words.ts';

/** Every publication behind the working of some plans. A file of its own: its table is large and seldom asked for. */
export function sourcesText(recommendations: readonly Recommendation[]): string {
  const cited = recommendations.flatMap((each) => (each.derivation === undefined ? [] : citedIn(each.derivation)));
  const keys = [...new Set(cited)].sort();
  return `${words.sourcesTitle}\n${keys.map((key) => hanging(`${key}: `, cite(key), 2)).join('\n')}\n`;
}
