import type { Derivation, Step, Term } from '@sorrel/engine/derivation';
import { hanging } from './layout.ts';
import { words } from './words.ts';

/** A number as a person reads it: four figures, no exponent for everyday sizes. */
export function figure(value: number | string): string {
  if (typeof value === 'string') return value;
  if (!Number.isFinite(value)) return String(value);
  const size = Math.abs(value);
  if (size !== 0 && (size < 1e-4 || size >= 1e6)) return value.toExponential(2);
  return String(Number(value.toPrecision(4)));
}

const withUnit = (value: number | string, unit: string): string =>
  unit === '' || unit === '1' ? figure(value) : `${figure(value)} ${unit}`;

/**
 * The working behind a plan, as numbered steps. Each names its formula, its values with their units and where they
 * came from, its result and its sources; what is from memory says so.
 *
 * @param only symbol or words of the one figure that is asked for; the steps it rests on are shown with it
 */
export function derivationText(derivation: Derivation, only?: string): string {
  const steps = only === undefined ? derivation.steps : behind(derivation, only);
  if (steps.length === 0)
    return hanging('', words.whyNothing(only ?? '', derivation.steps.map((step) => step.symbol).join(', ')), 2);
  return steps.map((step) => stepText(step)).join('\n');
}

function stepText(step: Step): string {
  const lines = [hanging(`${String(step.index + 1).padStart(4)}. `, `${step.title} (${step.symbol})`, 0)];
  lines.push(hanging(`${words.whyFormula}: `, step.formula, 6));
  if (step.terms.length > 0) lines.push(hanging(`${words.whyWith}: `, step.terms.map(termText).join('; '), 6));
  lines.push(hanging(`${words.whyGives}: `, `${step.symbol} = ${withUnit(step.value, step.unit)}`, 6));
  const memory = step.basis === 'memory' ? ` ${words.whyMemory}` : '';
  lines.push(hanging(`${words.whySource}: `, `${step.sources.join(', ')}${memory}`, 6));
  if (step.note !== undefined) lines.push(hanging('', step.note, 6));
  return lines.join('\n');
}

function termText(term: Term): string {
  const origin =
    term.origin === 'step' && term.step !== undefined
      ? words.fromStep(term.step + 1)
      : term.origin === 'table' && term.source !== undefined
        ? term.source
        : words.origins[term.origin];
  return `${term.symbol} = ${withUnit(term.value, term.unit)} (${origin})`;
}

/** The steps that bear the symbol or have the words in their title, with all the steps they rest on, in order. */
function behind(derivation: Derivation, only: string): Step[] {
  const wanted = only.toLowerCase();
  const exact = derivation.steps.filter((step) => step.symbol.toLowerCase() === wanted);
  const found = exact.length > 0 ? exact : derivation.steps.filter((step) => step.title.toLowerCase().includes(wanted));
  const kept = new Set<number>();
  const keep = (step: Step | undefined): void => {
    if (step === undefined || kept.has(step.index)) return;
    kept.add(step.index);
    for (const term of step.terms) if (term.step !== undefined) keep(derivation.steps[term.step]);
  };
  found.forEach(keep);
  return derivation.steps.filter((step) => kept.has(step.index));
}

/** Every citation key of a derivation, in order of first use. */
export const citedIn = (derivation: Derivation): string[] => [
  ...new Set(derivation.steps.flatMap((step) => [...step.sources, ...step.terms.flatMap((term) => term.source ?? [])])),
];
