import type { Place } from '@sorrel/engine/plan';
import { shortExtent } from './content/place-words.ts';
import { qrSvg } from './content/qr.ts';
import { labelsDesign } from './designs/labels.typ.ts';
import { type PrintOptions, paperOf } from './options.ts';
import { speakerFor } from './speaker.ts';
import { typeset } from './typeset/typeset.ts';

export interface LabelOptions extends PrintOptions {
  /** Address that the label's QR code leads to. */
  readonly url: (place: Place) => string;
  /** What is printed as the id; default the place's own. */
  readonly shortId?: (place: Place) => string;
}

/**
 * Labels for beds, ten on a page, to cut out and put under a cover: name, id, and a QR code that leads to the place.
 *
 * @returns PDF; no places give one empty page
 * @throws Error when an address is longer than a QR code can hold
 */
export function labels(places: readonly Place[], options: LabelOptions): Uint8Array {
  const speaker = speakerFor(options);
  const urls = places.map(options.url);
  const data = {
    title: speaker.word('print.title-labels'),
    paper: paperOf(options),
    language: options.language ?? 'en',
    size: 11,
    words: { scan: speaker.word('print.label-scan') },
    labels: places.map((place, index) => ({
      name: place.name,
      extent: shortExtent(place, speaker),
      id: options.shortId?.(place) ?? place.id,
      url: urls[index] ?? '',
    })),
  };
  return typeset(labelsDesign, data, { drawings: urls.map(qrSvg), fonts: options.fonts ?? [] });
}
