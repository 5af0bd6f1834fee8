import { base } from './base.typ.ts';
import { phLineDesign } from './ph-line.typ.ts';

const pages = `
#let foot-words = w.local-rules + " " + w.printed
#set page(
  paper: data.paper, margin: (x: 18mm, top: 12mm, bottom: 17mm), footer-descent: 25%,
  footer: context {
    set text(size: 8.5pt * grow)
    line(length: 100%, stroke: 0.5pt)
    v(-0.45em)
    grid(columns: (1fr, 4.5em), column-gutter: 1em, foot-words, align(right, [#w.page-word #counter(page).display()]))
  },
)

#let head(h) = {
  grid(columns: (2.6em, 1fr), column-gutter: 0.7em, leaf(2.5em), {
    heading(level: 1, text(size: if h.title.clusters().len() > 44 { 1.25em } else { 1.6em }, weight: "bold", h.title))
    v(0.6em, weak: true)
    text(size: 0.9em, h.under)
  })
  v(0.4em)
}

#let rows-of(t) = table(
  columns: t.widths.map(each => if each == "auto" { auto } else { 1fr * float(each) }),
  inset: (x: 4pt, y: 4.5pt), align: left,
  stroke: (x, y) => (bottom: if y == 0 { 1pt } else { 0.4pt + luma(50%) }),
  table.header(..t.head.map(each => text(size: small, weight: "bold", each))),
  ..t.rows.map(row => row.enumerate().map(((i, each)) => text(size: 0.92em, weight: if i == 0 { "bold" } else { "regular" }, each))).flatten(),
)

// A bar that says how likely: a frame of a fixed width, filled as far as the share goes.
#let chance-bar(share) = box(width: 7em, height: 0.75em, stroke: 0.7pt + black, align(left, rect(width: 100% * share, height: 100%, fill: black)))
#let chances(list) = grid(
  columns: (1fr, auto, auto), column-gutter: 0.9em, row-gutter: 0.75em,
  ..list.map(each => ([*#each.name* #text(size: small, each.kind)], chance-bar(each.share), align(right, each.chance))).flatten(),
)

#let part(p) = {
  heading(level: 2, p.title)
  if "lead" in p { par(p.lead) }
  if "chances" in p { chances(p.chances) }
  if "table" in p { rows-of(p.table) }
  if "items" in p { bullets(p.items) }
  if "ticks" in p { ticked(p.ticks) }
  if "lines" in p { for i in range(p.lines) { v(1.5em); std.line(length: 100%, stroke: 0.4pt + luma(40%)) } }
}

#let publications(h) = if h.sources.len() > 0 {
  block(above: 1.2em, {
    set text(size: 7.4pt * grow)
    set par(leading: 0.36em)
    text(weight: "bold", w.sources + ": ")
    for s in h.sources { text(weight: "bold", s.key); [ ]; s.text; [. ] }
  })
}

#let sheet(h) = {
  counter(page).update(1)
  show heading.where(level: 1): it => it.body
  head(h)
  for p in h.first { part(p) }
  if "line" in h { heading(level: 2, h.line-title)
    // The lanes are made for letters of a sheet; larger names would run into one another.
    text(size: calc.min(13pt, size), shared-line(h.line))
  }
  if "drawing" in h {
    block(breakable: false, width: 100%, above: 1em, figure(
      kind: "usable", supplement: none, alt: h.alternative,
      image(bytes(data.drawings.at(h.drawing)), format: "svg", width: if large { 100% } else { 74% }),
    ))
  }
  for p in h.parts { part(p) }
  publications(h)
  if h.memory { block(above: 0.7em, text(size: 8pt * grow, w.memory-note)) }
}

#for (index, h) in data.sheets.enumerate() {
  if index > 0 { pagebreak(weak: true) }
  sheet(h)
}
`;

/** Pages of headings, tables and pictures: a plant, what is usable in a place, what was seen on a sick plant. */
export const pageDesign = { name: 'The page', source: base + phLineDesign + pages };
