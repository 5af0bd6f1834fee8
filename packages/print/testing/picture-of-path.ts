/** Pixels a module is drawn with, enough for any reader. */
const PIXELS = 6;

export interface Picture {
  readonly data: Uint8ClampedArray<ArrayBuffer>;
  readonly width: number;
  readonly height: number;
  readonly colorSpace: 'srgb';
}

/**
 * Paints an SVG of one path of straight, upright lines (even-odd rule), as a printer would.
 *
 * @returns RGBA pixels, black on white
 */
export function pictureOfPath(svg: string): Picture {
  const [x0 = 0, y0 = 0, side = 0] = (/viewBox="([^"]+)"/.exec(svg)?.[1] ?? '').split(' ').map(Number);
  const outlines = (/ d="([^"]+)"/.exec(svg)?.[1] ?? '')
    .split('Z')
    .map((part) => [...part.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map((m) => [Number(m[1]), Number(m[2])] as const))
    .filter((points) => points.length > 0);
  const dark = (x: number, y: number): boolean =>
    outlines.reduce((count, points) => {
      const crossed = points.filter(([ax, ay], index) => {
        const [, by] = points[(index + 1) % points.length] ?? [0, 0];
        return ax > x && ay > y !== by > y;
      });
      return count + crossed.length;
    }, 0) %
      2 ===
    1;
  const width = side * PIXELS;
  const data = new Uint8ClampedArray(width * width * 4).fill(255);
  for (let row = 0; row < side; row++)
    for (let column = 0; column < side; column++) {
      if (!dark(x0 + column + 0.5, y0 + row + 0.5)) continue;
      for (let y = row * PIXELS; y < (row + 1) * PIXELS; y++)
        data
          .subarray((y * width + column * PIXELS) * 4, (y * width + (column + 1) * PIXELS) * 4)
          .forEach((_, index, pixels) => {
            if (index % 4 !== 3) pixels[index] = 0;
          });
    }
  return { data, width, height: width, colorSpace: 'srgb' };
}
