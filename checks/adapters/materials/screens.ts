import { openingOf, type Sieve, type SizeShare, sievesFromRetained } from '@sorrel/engine/materials';

/** Opening of a screen named in a case: a whole number is a mesh, a number below 4 is mm, unless the key says mm or µm. */
export function screenOf(name: string, key: string): number {
  const bare = name.trim();
  const unit = /(^|_)(um|µm)(_|$)|micron/i.test(key) ? ' um' : /(^|_)mm(_|$)/i.test(key) ? ' mm' : '';
  const text = /[a-zµμ#]/i.test(bare) ? bare : unit !== '' ? bare + unit : Number(bare) < 4 ? `${bare} mm` : bare;
  const opening = openingOf(text);
  if (opening === undefined) throw new Error(`no screen called ${name}`);
  return opening;
}

const FINER = /^(?:<|-|pass(?:ing)?[ _]?|through[ _]?|minus[ _]?|finer[ _]?(?:than)?[ _]?)/i;
const COARSER = /^(?:>|\+|retained[ _]?(?:on)?[ _]?|on[ _]?|over[ _]?|coarser[ _]?(?:than)?[ _]?)/i;

/** Bounds of a size class as cases write it: `<60`, `20-60`, `>8`, `850-250`, `<0.5`. */
export function boundsOf(label: string, key: string): Pick<SizeShare, 'finerThan' | 'coarserThan'> {
  const between = /^([\d.]+)\s*(?:-|to|–)\s*([\d.]+)\s*([a-zµ]*)$/i.exec(label.trim());
  if (between !== null) {
    const ends = [between[1], between[2]].map((end) =>
      Number(end) === 0 ? 0 : screenOf(`${end}${between[3] ?? ''}`, key),
    );
    const [a = 0, b = 0] = ends;
    const coarserThan = Math.min(a, b);
    return coarserThan === 0 ? { finerThan: Math.max(a, b) } : { finerThan: Math.max(a, b), coarserThan };
  }
  if (FINER.test(label)) return { finerThan: screenOf(label.replace(FINER, ''), key) };
  if (COARSER.test(label)) return { coarserThan: screenOf(label.replace(COARSER, ''), key) };
  throw new Error(`no size class called ${label}`);
}

/** Percentages, or fractions when none is above 1. */
const fraction = (table: Readonly<Record<string, number>>) => (Object.values(table).every((x) => x <= 1) ? 1 : 0.01);

export const passingSieves = (table: Readonly<Record<string, number>>, key: string): Sieve[] =>
  Object.entries(table).map(([name, value]) => ({
    opening: screenOf(name.replace(FINER, ''), key),
    passing: value * fraction(table),
  }));

/** A stack of screens by what stays on each; the pan is what is left. */
export const retainedSieves = (table: Readonly<Record<string, number>>, key: string): Sieve[] =>
  sievesFromRetained(
    Object.entries(table)
      .filter(([name]) => !FINER.test(name) && !/pan/i.test(name))
      .map(([name, value]) => ({ opening: screenOf(name.replace(COARSER, ''), key), share: value * fraction(table) })),
  );

export const classShares = (table: Readonly<Record<string, number>>, key: string): SizeShare[] =>
  Object.entries(table).map(([label, value]) => ({ ...boundsOf(label, key), share: value * fraction(table) }));

export const isSizeTable = (table: Readonly<Record<string, number>> | undefined): boolean =>
  table !== undefined && Object.keys(table).some((name) => /\d/.test(name)) && !('P2O5' in table) && !('K2O' in table);
