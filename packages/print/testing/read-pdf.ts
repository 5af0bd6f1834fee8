import { getDocument, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface Written {
  readonly text: string;
  /** Size of the letters in points. */
  readonly size: number;
}

export interface ReadPage {
  /** Width and height in points. */
  readonly size: readonly [number, number];
  /** All words of the page, with single spaces; places to break within words are taken out. */
  readonly text: string;
  readonly pieces: readonly Written[];
}

/** Reads a PDF back with a library that had no part in writing it. */
export async function readPdf(
  bytes: Uint8Array,
): Promise<{ readonly title: string; readonly pages: readonly ReadPage[] }> {
  const task = getDocument({ data: bytes.slice(), verbosity: VerbosityLevel.ERRORS });
  const document = await task.promise;
  const { info } = await document.getMetadata();
  const pages: ReadPage[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const [, , width = 0, height = 0] = page.view;
    const { items } = await page.getTextContent();
    const pieces = items.flatMap((item) =>
      'str' in item
        ? [{ text: item.str + (item.hasEOL ? '\n' : ''), size: Math.hypot(item.transform[2], item.transform[3]) }]
        : [],
    );
    const text = pieces.map((piece) => piece.text).join('');
    pages.push({ size: [width, height], text: text.replace(/\u200b/g, '').replace(/\s+/g, ' '), pieces });
  }
  const title = 'Title' in info && typeof info.Title === 'string' ? info.Title : '';
  await task.destroy();
  return { title, pages };
}
