import { base } from './base.typ.ts';

const pages = String.raw`
#set page(
  paper: data.paper, margin: (x: 17mm, top: 12mm, bottom: 17mm), footer-descent: 25%,
  footer: context {
    set text(size: 8.5pt * grow)
    line(length: 100%, stroke: 0.5pt)
    v(-0.45em)
    grid(columns: (1fr, auto), column-gutter: 1.5em, w.local-rules + " " + w.printed, [#w.page-word #counter(page).display()])
  },
)
#let sheet = data.sheet
#show heading.where(level: 1): it => it.body

#grid(columns: (auto, 1fr, auto), column-gutter: 0.8em, align: (left, left + horizon, right + bottom),
  leaf(2.6em),
  heading(level: 1, text(size: if sheet.garden.clusters().len() > 40 { 1.25em } else { 1.6em }, weight: "bold", sheet.garden)),
  text(size: 0.9em)[*#w.arrangement* \ #w.made],
)
#v(0.4em)
#for each in sheet.said { par(each) }

#let thin = (x, y) => (bottom: if y == 0 { 1pt } else { 0.4pt + luma(50%) })
#let head(cells) = table.header(..cells.map(each => text(size: small, weight: "bold", each)))
#let growing(list) = if list.len() == 0 { text(fill: luma(35%), w.nothing) } else { stack(spacing: 0.45em, ..list.map(each => par(each))) }
#table(
  columns: (auto,) + sheet.seasons.map(each => 1.2fr) + (1.6fr,), inset: (x: 5pt, y: 5pt), align: left + top, stroke: thin,
  head((w.place,) + sheet.seasons + (w.why,)),
  ..sheet.places.map(p => (
    text(weight: "bold", p.name), ..range(sheet.seasons.len()).map(i => growing(p.seasons.at(i, default: ()))), text(size: 0.9em, p.why),
  )).flatten(),
)

#if sheet.apart.len() > 0 {
  heading(level: 2, w.apart)
  bullets(sheet.apart)
}
#if sheet.care.len() > 0 {
  heading(level: 2, w.unmet)
  for group in sheet.care { block(breakable: false, below: 0.7em, { text(weight: "bold", group.first()); bullets(group.slice(1)) }) }
}
#block(breakable: false, width: 100%, above: 1.4em, {
  heading(level: 2, w.saves)
  if sheet.saves != "" { par(sheet.saves) }
  table(
    columns: (1fr, auto, auto, auto, auto, auto, auto), inset: (x: 5pt, y: 5pt), stroke: thin,
    align: (x, y) => if x == 0 { left + bottom } else { right + bottom },
    head(("",) + w.columns),
    ..sheet.ways.flatten(),
  )
  text(size: small, w.note)
})
`;

/** What grows where, season by season, and why. */
export const arrangementDesign = { name: 'The arrangement', source: base + pages };
