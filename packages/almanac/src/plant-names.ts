const PLAIN = /^[A-Za-z0-9 ,()-]*$/;

/** Letters and spaces only: small, without accents, brackets or hyphens, each word in the singular. */
export function plainName(text: string): string {
  return (PLAIN.test(text) ? text : text.normalize('NFD').replace(/[\u0300-\u036f'’.]/g, ''))
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .trim()
    .split(' ')
    .map(singular)
    .join(' ');
}

/** Garden English only; it need not be right, it must treat `chives` and `chive` alike. */
function singular(word: string): string {
  if (word.length < 4 || !word.endsWith('s') || /(ss|us|is)$/.test(word)) return word;
  if (word.endsWith('ies')) return `${word.slice(0, -3)}y`;
  if (/(oes|shes|ches|xes|sses)$/.test(word)) return word.slice(0, -2);
  return word.slice(0, -1);
}

/**
 * Every way a printed name may be typed: as it stands, without its brackets, and with `Blueberry, highbush` turned
 * to `highbush blueberry`.
 */
export function formsOf(name: string): string[] {
  const bare = name.replace(/\s*\(.*?\)/g, '');
  const forms = [plainName(name), plainName(bare)];
  const comma = bare.indexOf(',');
  if (comma > 0) forms.push(plainName(`${bare.slice(comma + 1)} ${bare.slice(0, comma)}`));
  return forms;
}

/** Groups of three neighbouring letters, with the word's ends marked. */
export function trigrams(plain: string): Set<string> {
  const padded = `  ${plain} `;
  const found = new Set<string>();
  for (let i = 0; i + 3 <= padded.length; i++) found.add(padded.slice(i, i + 3));
  return found;
}

/** Dice's likeness of two sets, 0 to 1. */
export function likeness(a: ReadonlySet<string>, b: ReadonlySet<string>): number {
  let shared = 0;
  for (const part of a) if (b.has(part)) shared++;
  return (2 * shared) / (a.size + b.size);
}
