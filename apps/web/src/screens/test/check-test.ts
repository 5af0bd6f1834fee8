import type { Problem } from '@sorrel/engine/derivation';
import { readGarden } from '@sorrel/engine/document';
import { label, type WebCode } from '../../words/label.ts';
import type { TestEntry } from './draft.ts';
import { allFigures } from './figures.ts';

/** What is wrong with an entry of the form, in the form's own words. */
export interface Fault {
  /** Path in the test, as the form names its fields; empty for the test as a whole. */
  readonly path: string;
  readonly message: string;
  readonly fix: string;
}

const headLabels: Readonly<Record<string, WebCode>> = {
  date: 'web.test-date',
  by: 'web.test-by',
  laboratory: 'web.test-laboratory',
  region: 'web.test-region',
  depth: 'web.test-depth',
  cores: 'web.test-cores',
  note: 'web.test-note',
};
const labels: Readonly<Record<string, WebCode>> = {
  ...headLabels,
  ...Object.fromEntries(allFigures.flatMap((figure) => figure.fields.map((field) => [field.path, field.label]))),
};
const chosen: ReadonlySet<string> = new Set(
  allFigures.flatMap((figure) => figure.fields.filter((field) => field.type === 'choice').map((field) => field.path)),
);
/** The engine's own names for fields where the document has another word. */
const renamed: Readonly<Record<string, string>> = {
  'buffer.method': 'buffer.kind',
  aluminum: 'aluminium',
  instrument: 'by',
};

/**
 * Checks a test as the engine will read it.
 *
 * @param content as it would be stored
 * @param today ISO date
 */
export function checkTest(content: TestEntry, today: string): readonly Fault[] {
  const { problems } = readGarden({ garden: 'x', places: [{ name: 'x', tests: [content] }] }, { today });
  return problems.map(faultOf);
}

function faultOf({ code: kind, field, message, fix }: Problem): Fault {
  const bare = field.replace(/^(places\[0\]\.)?tests\[0\]\.?/, '');
  const path = renamed[bare] ?? bare;
  const code = labels[path] ?? labels[`${path}.value`];
  const known = labels[path] === undefined && labels[`${path}.value`] !== undefined ? `${path}.value` : path;
  if (kind === 'document.missing' && labels[known] !== undefined)
    return {
      path: known,
      message: label('web.test-missing', { what: label(labels[known]) }),
      fix: label(chosen.has(known) ? 'web.test-missing-choice-fix' : 'web.test-missing-fix'),
    };
  const named = (text: string): string => {
    const words =
      code === undefined ? text : text.replaceAll(field, label(code)).replaceAll(bare || field, label(code));
    return words.charAt(0).toUpperCase() + words.slice(1);
  };
  return { path: known, message: named(message), fix: named(fix) };
}
