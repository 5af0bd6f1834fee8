import { cite } from '@sorrel/almanac/sources';
import type { Derivation } from '@sorrel/engine/derivation';
import { citedIn } from './derivation-text.ts';
import { hanging } from './layout.ts';
import { words } from './words.ts';

/** Every publication behind some workings. A file of its own: its table is large and seldom asked for. */
export function sourcesText(derivations: readonly Derivation[]): string {
  const keys = [...new Set(derivations.flatMap(citedIn))].sort();
  return `${words.sourcesTitle}\n${keys.map((key) => hanging(`${key}: `, cite(key), 2)).join('\n')}\n`;
}
