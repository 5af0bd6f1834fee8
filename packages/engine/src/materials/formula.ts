import { atomicMass } from '@sorrel/almanac/elements';
import { fail, ok, type Result } from '../derivation/problem.ts';

/** Atoms of each element in one formula unit. */
export type Composition = ReadonlyMap<string, number>;

/**
 * Reads a chemical formula with groups and water of crystallisation, e.g. `Al2(SO4)3.18H2O` or `FeSO4·7H2O`.
 *
 * @returns atoms by element, or a problem naming the place where the formula stops making sense
 */
export function parseFormula(formula: string): Result<Composition> {
  const atoms = new Map<string, number>();
  for (const part of formula.replace(/\s/g, '').split(/[.·*]/)) {
    const [, count = '', rest = ''] = /^(\d*)(.*)$/.exec(part) ?? [];
    const read = readGroup(rest, 0);
    if (rest === '' || read === undefined || read.end !== rest.length) return unreadable(formula, part);
    for (const [element, n] of read.atoms) atoms.set(element, (atoms.get(element) ?? 0) + n * Number(count || 1));
  }
  for (const element of atoms.keys()) if (atomicMass(element) === undefined) return unreadable(formula, element);
  return ok(atoms);
}

/** Molar mass, kg/mol, of a composition that `parseFormula` gave. Source: CALC (IUPAC abridged masses). */
export function molarMass(composition: Composition): number {
  let grams = 0;
  for (const [element, n] of composition) grams += n * (atomicMass(element) ?? Number.NaN);
  return grams / 1000;
}

function readGroup(text: string, start: number): { atoms: Map<string, number>; end: number } | undefined {
  const atoms = new Map<string, number>();
  let at = start;
  while (at < text.length && text[at] !== ')') {
    let inner: ReadonlyMap<string, number>;
    if (text[at] === '(') {
      const group = readGroup(text, at + 1);
      if (group === undefined || text[group.end] !== ')') return undefined;
      inner = group.atoms;
      at = group.end + 1;
    } else {
      const symbol = /^[A-Z][a-z]?/.exec(text.slice(at))?.[0];
      if (symbol === undefined) return undefined;
      inner = new Map([[symbol, 1]]);
      at += symbol.length;
    }
    const digits = /^\d*/.exec(text.slice(at))?.[0] ?? '';
    at += digits.length;
    for (const [element, n] of inner) atoms.set(element, (atoms.get(element) ?? 0) + n * Number(digits || 1));
  }
  return { atoms, end: at };
}

const unreadable = (formula: string, part: string) =>
  fail({
    code: 'materials.formula',
    field: 'formula',
    value: formula,
    message: `"${formula}" is not a formula we can read, from "${part}" on.`,
    fix: 'Write it like CaCO3, Ca(OH)2 or FeSO4.7H2O.',
  });
