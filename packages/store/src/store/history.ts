import type { Numbered } from '../record/things.ts';

/** Every entry about one thing, in the order of arrival: its first, what changed it, and what took those back. */
export function historyOf(entries: readonly Numbered[], thing: string): readonly Numbered[] {
  const about = new Set<string>();
  return entries.filter(({ entry }) => {
    const belongs =
      entry.action === 'add' ? entry.id === thing : about.has(entry.action === 'undo' ? entry.entry : entry.thing);
    if (belongs) about.add(entry.id);
    return belongs;
  });
}
