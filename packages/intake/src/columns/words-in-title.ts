import { reportWords } from '@sorrel/almanac/report-words';

type Kind = 'ph-method' | 'buffer';

/** Ratios and names of methods, longest first, so that `1:2.5` is not taken for `1:2`. */
const spellings = (kind: Kind) =>
  reportWords
    .filter((row) => row.kind === kind)
    .flatMap(({ value, spellings: all }) => all.filter((text) => text.length >= 3).map((text) => ({ text, value })))
    .sort((a, b) => rank(b.text) - rank(a.text) || b.text.length - a.text.length);

/** A salt in a title says more than the ratio beside it. */
const rank = (text: string): number => (/cacl|kcl|chloride/.test(text) ? 1 : 0);

const known: Readonly<Record<Kind, readonly { text: string; value: string; pattern: RegExp }[]>> = {
  'ph-method': withPatterns(spellings('ph-method')),
  buffer: withPatterns(spellings('buffer')),
};

function withPatterns(all: readonly { text: string; value: string }[]) {
  return all.map(({ text, value }) => {
    const safe = text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/[ -]/g, '[\\s-]*');
    return { text, value, pattern: new RegExp(`(?:^|[^a-z0-9:])${safe}(?=$|[^a-z0-9:.]|\\.(?!\\d))`, 'i') };
  });
}

/** The method a title names, and the title without it. */
export function methodIn(title: string, kind: Kind): { readonly value: string; readonly rest: string } | undefined {
  const plain = title.normalize('NFKC');
  for (const { value, pattern } of known[kind])
    if (pattern.test(plain)) return { value, rest: plain.replace(pattern, ' ') };
  return undefined;
}
