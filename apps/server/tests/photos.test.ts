import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { redrawPhoto } from '../src/photo.ts';
import { type Running, running } from '../testing/running.ts';

let server: Running;
beforeAll(async () => {
  server = await running();
});
afterAll(() => server?.stop());

const picture = (width: number, height: number) =>
  sharp({ create: { width, height, channels: 3, background: { r: 40, g: 120, b: 40 } } });

/** A photo as a telephone writes it: lying on its side, with the place where it was taken. */
const withPlace = () =>
  picture(400, 200)
    .withExif({
      IFD0: { Make: 'Invented camera', Orientation: '6' },
      IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1', GPSLongitudeRef: 'W', GPSLongitude: '0/1 7/1 0/1' },
    })
    .withMetadata({ orientation: 6 })
    .jpeg()
    .toBuffer();

const send = (bytes: Uint8Array, type = 'image/jpeg') =>
  server.ask('POST', '/api/photos', new Uint8Array(bytes), { 'content-type': type });

describe('a photo', () => {
  it('is kept upright and without anything the camera wrote into it', async () => {
    const taken = await withPlace();
    expect((await sharp(taken).metadata()).exif?.toString('latin1')).toContain('Invented camera');
    const kept = await send(taken);
    expect([kept.status, kept.body.width, kept.body.height]).toEqual([201, 200, 400]);
    const shown = await server.ask('GET', `/api/photos/${kept.body.photo}`);
    expect(shown.headers.get('content-type')).toBe('image/jpeg');
    expect(shown.headers.get('cache-control')).toContain('immutable');
    const { exif, icc, xmp, iptc, orientation, width } = await sharp(shown.body).metadata();
    expect([exif, icc, xmp, iptc, orientation, width]).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
      200,
    ]);
    expect(Buffer.from(shown.body).includes('Invented camera')).toBe(false);
  });

  it('has one name however often it is sent, and can be shown by an observation', async () => {
    const taken = await withPlace();
    const [one, two] = [await send(taken), await send(taken)];
    expect(two.body).toEqual(one.body);
  });

  it('is made smaller, never larger', async () => {
    const large = await send(await picture(4000, 3000).jpeg().toBuffer());
    expect([large.body.width, large.body.height]).toEqual([1600, 1200]);
    const small = await send(await picture(40, 30).png().toBuffer(), 'image/png');
    expect([small.body.width, small.body.height]).toEqual([40, 30]);
  });

  it.each(['png', 'webp', 'avif'] as const)('may come as %s and is kept as JPEG', async (format) => {
    const { status, body } = await send(await picture(64, 64).toFormat(format).toBuffer(), `image/${format}`);
    expect(status).toBe(201);
    expect((await server.ask('GET', `/api/photos/${body.photo}`)).headers.get('content-type')).toBe('image/jpeg');
  });
});

describe('what is no photo', () => {
  const svg = new TextEncoder().encode('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><rect/></svg>');

  it('is refused by its kind', async () => {
    expect((await send(svg, 'image/svg+xml')).status).toBe(415);
    expect((await send(svg, 'text/html')).status).toBe(415);
    expect((await server.ask('POST', '/api/photos', svg)).status).toBe(415);
  });

  it('is refused by its content, whatever it says of itself', async () => {
    const half = (await picture(400, 300).jpeg().toBuffer()).subarray(0, 900);
    const page = new TextEncoder().encode('<script>alert(1)</script>');
    for (const bytes of [svg, page, half, new Uint8Array(0)]) expect((await send(bytes)).status).toBe(422);
  });

  it('is refused when it would unfold into too large a picture', async () => {
    const bomb = await sharp({ create: { width: 8000, height: 6300, channels: 3, background: '#fff' } })
      .png({ compressionLevel: 6 })
      .toBuffer();
    expect(bomb.length).toBeLessThan(1_000_000);
    expect((await redrawPhoto(bomb)).ok).toBe(false);
  });

  it('is refused when it is too large a file', async () => {
    expect((await send(new Uint8Array(17 * 1024 * 1024))).status).toBe(413);
  });
});
