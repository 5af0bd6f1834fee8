import { base } from './base.typ.ts';

const pages = `
#let foot-words = w.local-rules + " " + w.printed
#set page(paper: data.paper, margin: (x: 18mm, top: 14mm, bottom: 17mm), footer-descent: 25%, footer: context {
  set text(size: 8.5pt)
  line(length: 100%, stroke: 0.5pt)
  v(-0.45em)
  grid(columns: (1fr, 4.5em), column-gutter: 1em, foot-words, align(right, [#w.page-word #counter(page).display()]))
})

#grid(columns: (2em, 1fr, auto), column-gutter: 0.8em, leaf(2.6em), {
  show heading.where(level: 1): it => it.body
  text(size: 1.7em, weight: "bold", heading(level: 1, data.title))
  v(0.6em, weak: true)
  text(size: 0.95em, (w.purpose, ..data.facts).join(". ") + ".")
}, box(stroke: 1.2pt, radius: 2pt, inset: 0.5em, text(size: small, weight: "bold", w.private)))

// A bar a class of pH, its count above it: nothing rests on colour.
#let bar(count, most, height) = align(center + bottom, block(height: height + 1.2em, width: 100%, align(center + bottom, {
  if count > 0 {
    text(size: small, weight: "bold", str(count))
    v(0.2em, weak: true)
    rect(width: 70%, height: calc.max(1.2pt, height * count / most), fill: luma(45%), stroke: 0.7pt)
  } else { text(size: small, fill: luma(45%), "·") }
})))
#let row-of(group, height) = {
  let most = calc.max(1, ..group.counts)
  (
    align(left + horizon, [#text(weight: "bold", group.name) \\ #text(size: small, group.samples) \\ #text(size: small, group.median)]),
    ..group.counts.map(count => bar(count, most, height)),
  )
}

#heading(level: 2, w.soils)
#text(size: 0.9em, w.soils-note)
#let alternative = (data.all, ..data.groups).map(group => group.alternative).join(" ")
#show figure: set block(breakable: true)
#figure(kind: "soils", supplement: none, alt: alternative, table(
  columns: (6.6em, ..data.ranges.map(_ => 1fr)), inset: (x: 1.5pt, y: 3pt), align: center,
  stroke: (x, y) => (bottom: 0.5pt + luma(50%), top: if y == 0 { none } else { 0.5pt + luma(50%) }),
  table.header(
    align(left, text(size: 0.72em, w.ph)),
    ..data.ranges.map(range => text(size: 0.72em, weight: "bold", range)),
  ),
  ..row-of(data.all, 20mm),
  ..data.groups.map(group => row-of(group, 9mm)).flatten(),
))

#let counted(items) = grid(
  columns: (2.2em, 1fr), column-gutter: 0.7em, row-gutter: 0.6em,
  ..items.map(each => (align(right, text(weight: "bold", str(each.count))), each.text)).flatten(),
)
#grid(columns: (1fr, 1.6fr), column-gutter: 1.8em,
  { heading(level: 2, w.decisions); counted(data.decisions) },
  { heading(level: 2, w.problems); counted(data.problems) },
)

#block(width: 100%, above: 1.2em, stroke: 2pt + black, radius: 3pt, inset: 0.8em, {
  block(sticky: true, below: 0.6em)[#danger #h(0.3em) #text(weight: "bold", w.calls)]
  if data.calls.len() == 0 { w.no-call } else {
    text(size: 0.9em, w.calls-note)
    table(
      columns: (auto, auto, 28%, 1fr), inset: (x: 4pt, y: 4pt), align: left,
      stroke: (x, y) => (bottom: 0.4pt + luma(50%)),
      table.header([], text(size: small, weight: "bold", w.code), text(size: small, weight: "bold", w.person), text(size: small, weight: "bold", w.why)),
      ..data.calls.map(each => (tick-box(), text(weight: "bold", each.code), each.who, each.why)).flatten(),
    )
  }
})

#block(breakable: false, {
  heading(level: 2, w.shopping)
  if data.shopping.len() == 0 { w.shopping-none } else {
    table(
      columns: (1fr, auto), inset: (x: 4pt, y: 4pt), align: (left, right), stroke: (x, y) => (bottom: 0.4pt + luma(50%)),
      ..data.shopping.map(each => (each.name, text(weight: "bold", each.needed))).flatten(),
    )
    text(size: 0.9em, w.shopping-note)
  }
})
`;

/** A soil day at a glance, for the one who runs it. */
export const daySummaryDesign = { name: 'The summary of a soil day', source: base + pages };
