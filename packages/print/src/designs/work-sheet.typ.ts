import { base } from './base.typ.ts';
import { phLineDesign } from './ph-line.typ.ts';

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
  heading(level: 1, text(size: if sheet.name.clusters().len() > 40 { 1.25em } else { 1.6em }, weight: "bold", sheet.name)),
  text(size: 0.9em)[*#w.work-sheet* \ #w.plan-of #sheet.day],
)

#heading(level: 2, w.line-title)
#shared-line(sheet.line)
#v(0.8em)

#let right-cells(cells) = cells.enumerate().map(((i, cell)) => if i == 0 { cell } else { align(right, cell) })
#let shopping = block(breakable: false, width: 100%, {
  heading(level: 2, w.shopping)
  if sheet.shopping.len() == 0 { w.shopping-none } else {
    table(
      columns: (auto, 1fr, auto, auto, auto, auto, auto), inset: (x: 5pt, y: 5pt), align: (x, y) => if x < 2 { left + horizon } else { right + horizon },
      stroke: (x, y) => (bottom: if y == 0 { 1pt } else { 0.4pt + luma(50%) }),
      table.header([], ..(w.shop-product, w.shop-needed, w.shop-on-hand, w.shop-buy, w.shop-bags, w.shop-cost).map(each => text(size: small, weight: "bold", each))),
      ..sheet.shopping.map(r => (tick-box(size: 0.85em), r.product, r.needed, r.onHand, r.buy, text(weight: "bold", r.bags), r.cost)).flatten(),
    )
    if sheet.total != "" { align(right, block(above: 0.5em, inset: (right: 5pt), [#w.shop-total #text(weight: "bold", sheet.total)])) }
    text(size: small, w.shop-note)
  }
})
#shopping

#let dose(each) = block(above: 0.7em, below: 0.7em, breakable: false, grid(
  columns: (auto, 1fr, auto), column-gutter: 0.7em,
  tick-box(size: 1.25em, later: each.later),
  {
    text(size: if each.later { 1em } else { 1.25em }, weight: "bold", each.weigh)
    text(size: 0.9em, [ (#each.scoop) ])
    text(weight: "bold", each.product)
    linebreak()
    text(size: 0.85em, (each.step, each.when, each.rate).join(". ") + ".")
  },
  { write-on(w.used, 5em); linebreak(); v(0.2em); write-on(w.on, 7em) },
))

#let card(p) = block(width: 100%, above: 1em, below: 0pt, breakable: false, stroke: 1.2pt + black, radius: 3pt, clip: true, {
  block(width: 100%, below: 0pt, fill: luma(90%), inset: (x: 0.8em, y: 0.55em), sticky: true, grid(
    columns: (1fr, auto), column-gutter: 1em, align: (left, right + horizon),
    [#text(size: 1.15em, weight: "bold", p.name) \ #text(size: small, p.extent + ". " + w.ph-now + " " + p.now + ".")],
    text(size: 1.1em, weight: "bold", p.decision),
  ))
  block(width: 100%, above: 0pt, inset: 0.8em, {
    set text(size: 0.95em)
    par([#p.reasons.join(" ") #text(size: 0.9em, p.target)])
    for each in p.doses { dose(each) }
    bullets(p.doses.map(each => each.how).flatten())
    if p.cautions.len() > 0 {
      set text(size: 0.92em)
      safety(w.take-care, p.cautions, columns: if p.cautions.len() < 3 { 1 } else { 2 })
    }
    ticked(p.ask)
    if p.retest != "" { ticked((p.retest,)) }
  })
})

#let notes = block(breakable: false, above: 1.4em, width: 100%, {
  heading(level: 2, w.notes)
  for i in range(5) { v(1.5em); line(length: 100%, stroke: 0.4pt + luma(40%)) }
})
#notes
#pagebreak()
#heading(level: 2, w.to-do)
#for p in sheet.places { card(p) }
#block(above: 1em, text(size: 8pt * grow, w.memory-note))
`;

/** One garden's work: the pH line, what to buy, and each place with boxes to tick and room to write. */
export const workSheetDesign = { name: 'The work sheet', source: base + phLineDesign + pages };
