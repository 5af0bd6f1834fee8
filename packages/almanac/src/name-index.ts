import { formsOf, likeness, plainName, trigrams } from './plant-names.ts';

export interface Named {
  readonly key: string;
  readonly name: string;
  readonly also: readonly string[];
  readonly botanical: string;
}

export interface NameIndex<R extends Named> {
  byKey(key: string): R | undefined;
  find(text: string): R | undefined;
  nearest(text: string, n: number): readonly { readonly plant: R; readonly score: number }[];
}

/** Below this the names share hardly more than chance letters. */
const LEAST_LIKENESS = 0.3;
const MOST_KEPT = 1000;

/** Kinds of name, the surest first: a printed name outranks another plant's second name. */
const NAMES: readonly ((row: Named) => readonly string[])[] = [
  (row) => [plainName(row.name)],
  (row) => row.also.map(plainName),
  (row) => formsOf(row.name),
  (row) => formsOf(row.botanical),
];

/** Finds plants of a table by what people call them. Everything is built on first use: most runs look up few plants or none. */
export function nameIndex<R extends Named>(rows: readonly R[]): NameIndex<R> {
  let keys: ReadonlyMap<string, R> | undefined;
  let written: readonly string[] | undefined;
  let shapes: readonly { readonly plant: R; readonly parts: ReadonlySet<string> }[] | undefined;
  // A plant we do not have is written many times in one table.
  const near = new Map<string, readonly { readonly plant: R; readonly score: number }[]>();
  // Names already looked up, so that a table of a hundred thousand rows searches each name once; bounded by the ways to
  // write the names we know.
  const found = new Map<string, R>();

  function byKey(key: string): R | undefined {
    keys ??= new Map(rows.map((row) => [row.key, row]));
    return keys.get(key);
  }

  function search(text: string): R | undefined {
    const exact = byKey(text.trim().toLowerCase());
    const wanted = plainName(text);
    if (exact !== undefined || wanted === '') return exact;
    // Working out every form of every name takes longer than a program should take to start, so a few letters of the
    // longest word sort out most plants first.
    written ??= rows.map((row) => [row.name, row.botanical, ...row.also].join(' ').toLowerCase());
    const word = wanted.split(' ').reduce((longest, next) => (next.length > longest.length ? next : longest));
    const hint = word.slice(0, Math.max(1, Math.min(3, word.length - 1)));
    const candidates = rows.filter((_, index) => written?.[index]?.includes(hint));
    for (const namesOf of NAMES) {
      const named = candidates.find((row) => namesOf(row).includes(wanted));
      if (named !== undefined) return named;
    }
    return undefined;
  }

  return {
    byKey,
    find(text) {
      const known = found.get(text);
      if (known !== undefined) return known;
      const plant = search(text);
      if (plant !== undefined) found.set(text, plant);
      return plant;
    },
    nearest(text, n) {
      const question = `${n} ${text}`;
      const known = near.get(question);
      if (known !== undefined) return known;
      const wanted = trigrams(plainName(text));
      shapes ??= rows.flatMap((plant) =>
        [...new Set([...formsOf(plant.name), ...plant.also.map(plainName)])].map((form) => ({
          plant,
          parts: trigrams(form),
        })),
      );
      const best = new Map<R, number>();
      for (const { plant, parts } of shapes) {
        const score = likeness(wanted, parts);
        if (score >= LEAST_LIKENESS && score > (best.get(plant) ?? 0)) best.set(plant, score);
      }
      const answer = [...best]
        .sort((a, b) => b[1] - a[1] || a[0].key.localeCompare(b[0].key))
        .slice(0, n)
        .map(([plant, score]) => ({ plant, score }));
      if (near.size >= MOST_KEPT) near.clear();
      near.set(question, answer);
      return answer;
    },
  };
}
