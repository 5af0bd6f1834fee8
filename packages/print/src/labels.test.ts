import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { beforeAll, describe, expect, it } from 'vitest';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import { demoGardens, demoPlace } from '../testing/demo-gardens.ts';
import { pictureOfPath } from '../testing/picture-of-path.ts';
import { readPdf } from '../testing/read-pdf.ts';
import { qrSvg } from './content/qr.ts';
import { labels } from './index.ts';

const options = {
  system: 'us',
  printed: '2026-10-20',
  url: ({ id }: { id: string }) => `https://garden.example/places/${id}`,
} as const;

describe('labels', () => {
  beforeAll(async () => {
    const wasm = readFileSync(createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm'));
    await prepareZXingModule({
      overrides: { wasmBinary: wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.length) },
      fireImmediately: true,
    });
  });

  it('carry a QR code that an independent reader (ZXing) reads, level Q or better', async () => {
    for (const text of [
      'https://garden.example/places/place-1',
      'https://192.168.1.20:8443/p/0f8fad5b-d9cb-469f-a165-70867728950e',
      'https://gärten.example/beete/möhren?x=1&y=%20',
    ]) {
      const [code] = await readBarcodes(pictureOfPath(qrSvg(text)), { formats: ['QRCode'] });
      expect(code?.text).toBe(text);
      expect(['Q', 'H']).toContain(code?.ecLevel);
    }
  });

  it('hold name, id and address of every place, ten on a page', async () => {
    const places = demoGardens.flatMap(({ garden }) => garden.places);
    const { pages } = await readPdf(labels(places, options));
    expect(pages).toHaveLength(Math.ceil(places.length / 10));
    const text = pages
      .map((page) => page.text)
      .join(' ')
      .replace(/\s+/g, '');
    for (const place of places) {
      expect(text).toContain(place.name.replace(/\s+/g, ''));
      expect(text).toContain(options.url(place).replace(/\s+/g, ''));
    }
  });

  it('print a short id of the caller’s making', async () => {
    const { pages } = await readPdf(labels([demoPlace('Lawn').place], { ...options, shortId: () => 'L-7' }));
    expect(pages[0]?.text).toContain('L-7');
  });
});
