import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type * as Typesetter from '@myriaddreamin/typst-ts-node-compiler';
import { fontsWith } from './fonts.ts';
import { BREAK, safeData } from './safe-text.ts';

/** A page design: source of the typesetter that reads its words and figures from `data`. */
export interface Design {
  readonly name: string;
  readonly source: string;
}

export interface SettingOptions {
  /** SVG of our own making, for the design to place. */
  readonly drawings?: readonly string[];
  /** PNG files of our own making, which the design finds as `picture-0.png` and so on. */
  readonly pictures?: readonly Uint8Array[];
  /** Structure for screen readers; default true. It makes a file four times as large. */
  readonly tagged?: boolean;
  /** Font files beside the packaged ones. */
  readonly fonts?: readonly string[];
}

/** A place to break is set as a space of no width, so that no letter in the PDF stands for it and copied text is whole. */
const breakHere = `#show "\\u{200b}": box(width: 0pt)\n`;

const room = dirname(fileURLToPath(import.meta.url));
const dataFile = join(room, 'data.json');
const pictureFile = (index: number): string => join(room, `picture-${index}.png`);
const compilers = new Map<string, Typesetter.NodeCompiler>();

/** One compiler for all pages: reading the fonts costs more than setting a page. Loaded when the first page is asked for. */
function compilerWith(fonts: readonly string[]): Typesetter.NodeCompiler {
  const key = fonts.join('\n');
  const known = compilers.get(key);
  if (known !== undefined) return known;
  const load = createRequire(import.meta.url);
  const { NodeCompiler }: typeof Typesetter = load('@myriaddreamin/typst-ts-node-compiler');
  const compiler = NodeCompiler.create({ workspace: room, fontArgs: [{ fontBlobs: fontsWith(fonts) }] });
  compilers.set(key, compiler);
  return compiler;
}

/**
 * Sets pages.
 *
 * @param design the page design; it may read nothing but `data`
 * @param data plain words and figures; text in it is never read as markup
 * @returns the bytes of a PDF that are the same for the same design and data
 * @throws RangeError when the design does not compile: a mistake in the program
 */
export function typeset(design: Design, data: object, options: SettingOptions = {}): Uint8Array {
  const setter = compilerWith(options.fonts ?? []);
  const json = JSON.stringify({ ...safeData(data), drawings: options.drawings ?? [] });
  setter.mapShadow(dataFile, Buffer.from(json));
  const pictures = options.pictures ?? [];
  for (const [index, picture] of pictures.entries()) setter.mapShadow(pictureFile(index), Buffer.from(picture));
  try {
    // Asked for only where a long word needs it: the rule has to look through every text of every page.
    const source = json.includes(BREAK) ? breakHere + design.source : design.source;
    const result = setter.compile({ mainFileContent: source });
    const set = result.result;
    if (set === null || result.hasError()) throw new RangeError(`${design.name} cannot be set: ${faults(result)}`);
    return new Uint8Array(setter.pdf(set, { pdfTags: options.tagged ?? true }));
  } finally {
    setter.unmapShadow(dataFile);
    for (const index of pictures.keys()) setter.unmapShadow(pictureFile(index));
    // What earlier pages left in the typesetter's memory must not grow without end in a server.
    setter.evictCache(4);
  }
}

const faults = (result: Typesetter.NodeTypstCompileResult): string =>
  JSON.stringify(result.takeError()?.shortDiagnostics ?? 'unknown fault');
