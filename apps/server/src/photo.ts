import type { Result } from '@sorrel/engine/derivation';
import { fail, ok } from '@sorrel/engine/derivation';
import sharp from 'sharp';
import { words } from './words.ts';

/** Longest side kept, in dots: enough to tell a yellow leaf with green veins from a yellow leaf. */
const longest = 1600;
/** A small file may unfold into a huge picture; above this it is refused before it is unfolded. */
const mostDots = 50_000_000;
/** Pictures made of dots only: drawings such as SVG can ask for work without end. */
const kinds: ReadonlySet<string> = new Set(['jpeg', 'png', 'webp', 'heif']);

export interface Photo {
  readonly type: 'image/jpeg';
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly width: number;
  readonly height: number;
}

/**
 * Draws a photo anew as a JPEG: turned upright, at most 1600 dots long, and without anything the camera wrote into it,
 * such as where it was taken. What comes out holds nothing of the file but its picture.
 *
 * @returns the photo, or why the file is none
 */
export async function redrawPhoto(file: Uint8Array): Promise<Result<Photo>> {
  try {
    const picture = sharp(file, { limitInputPixels: mostDots, failOn: 'error', animated: false });
    const { format } = await picture.metadata();
    if (!kinds.has(format)) throw new TypeError(format);
    const { data, info } = await picture
      .rotate()
      .resize(longest, longest, { fit: 'inside', withoutEnlargement: true })
      .flatten({ background: '#ffffff' })
      .jpeg({ quality: 80, mozjpeg: true })
      .toBuffer({ resolveWithObject: true });
    return ok({ type: 'image/jpeg', bytes: new Uint8Array(data), width: info.width, height: info.height });
  } catch {
    return fail({
      code: 'server.not-a-photo',
      field: 'photo',
      value: `${file.byteLength} bytes`,
      message: words.notAnImage,
      fix: words.imageFix,
    });
  }
}
