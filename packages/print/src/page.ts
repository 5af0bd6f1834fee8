import type { PhLine } from './content/ph-line.ts';
import { short } from './content/working.ts';
import { pageDesign } from './designs/page.typ.ts';
import { type PrintOptions, paperOf } from './options.ts';
import { type Speaker, speakerFor } from './speaker.ts';
import { typeset } from './typeset/typeset.ts';

/** One titled part of a page; what is left out is not drawn. */
export interface Part {
  readonly title: string;
  readonly lead?: string;
  readonly chances?: readonly {
    readonly name: string;
    readonly kind: string;
    readonly share: number;
    readonly chance: string;
  }[];
  /** Widths are `auto`, or a share of what is left. */
  readonly table?: {
    readonly widths: readonly string[];
    readonly head: readonly string[];
    readonly rows: readonly (readonly string[])[];
  };
  readonly items?: readonly string[];
  readonly ticks?: readonly string[];
  /** Empty lines to write on. */
  readonly lines?: number;
}

export interface Sheet {
  readonly title: string;
  readonly under: string;
  /** Before the pH line and the drawing, and after. */
  readonly first: readonly Part[];
  readonly line?: PhLine;
  readonly lineTitle?: string;
  readonly drawing?: { readonly svg: string; readonly alternative: string };
  readonly parts: readonly Part[];
  /** Citation keys of everything on it. */
  readonly sources: readonly string[];
  /** Whether something on it carries the mark of memory. */
  readonly memory: boolean;
}

export interface PageOptions extends PrintOptions {
  /** Body of 18 pt instead of 11 pt, and more pages. */
  readonly largePrint?: boolean;
}

/** Sets sheets, each from a page of its own. @returns PDF */
export function pages(title: string, sheets: readonly Sheet[], options: PageOptions, speaker = speakerFor(options)) {
  const drawings: string[] = [];
  const data = {
    title,
    paper: paperOf(options),
    language: options.language ?? 'en',
    size: options.largePrint === true ? 18 : 11,
    words: layoutWords(speaker, options),
    sheets: sheets.map(({ drawing, line, lineTitle, sources, ...rest }) => ({
      ...rest,
      sources: [...new Set(sources)].sort().map((key) => ({ key, text: short(key) })),
      ...(line === undefined || line.rows.length === 0 ? {} : { line, 'line-title': lineTitle ?? '' }),
      ...(drawing === undefined ? {} : { drawing: drawings.push(drawing.svg) - 1, alternative: drawing.alternative }),
    })),
  };
  return typeset(pageDesign, data, { drawings, fonts: options.fonts ?? [] });
}

const layoutWords = ({ word, day }: Speaker, options: PrintOptions): Record<string, string> => ({
  'local-rules': word('print.local-rules'),
  printed: word('print.printed', { date: day(options.printed) }),
  'page-word': word('print.page'),
  ph: word('print.line-ph'),
  sources: word('print.working-sources'),
  'memory-note': word('print.memory-note'),
});
