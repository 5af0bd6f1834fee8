import { base } from './base.typ.ts';

const pages = `
#set page(paper: data.paper, margin: (x: 12mm, y: 12mm))
#set par(leading: 0.4em)
#let letters(name) = { let n = name.clusters().len(); if n <= 14 { 20pt } else if n <= 30 { 16pt } else if n <= 60 { 12.5pt } else if n <= 120 { 9.5pt } else { 7.5pt } }
// A name beyond all measure is cut off rather than printed over what stands below it.
#let name-of(name) = {
  let body = text(size: letters(name), weight: "bold", name)
  if name.clusters().len() <= 60 { body } else { block(height: 17mm, clip: true, body) }
}
#let label-of(l, qr) = block(
  width: 100%, height: 50mm, clip: true, inset: 4mm, stroke: (paint: luma(45%), thickness: 0.5pt, dash: "dashed"),
  grid(columns: (38mm, 1fr), column-gutter: 4mm, align: (left + horizon, left + horizon),
    image(bytes(qr), format: "svg", width: 38mm, alt: l.url),
    {
      block(below: 0.7em, name-of(l.name))
      block(below: 0.7em, text(size: 10pt, l.extent))
      block(below: 0.9em, box(stroke: 1pt, radius: 2pt, inset: (x: 4pt, y: 3pt), text(size: 11pt, weight: "bold", l.id)))
      block(text(size: 7.5pt, l.url))
      [#leaf(8pt) #text(size: 7.5pt, w.scan)]
    },
  ),
)
#grid(columns: (1fr, 1fr), ..data.labels.zip(data.drawings).map(((l, qr)) => label-of(l, qr)))
`;

/** A sheet of bed labels to cut out. */
export const labelsDesign = { name: 'The sheet of labels', source: base + pages };
