import { base } from './base.typ.ts';
import { phLineDesign } from './ph-line.typ.ts';

const pages = `
#let every-step-too = data.every-step
// In a pile of hundreds a second sheet must find its way back to its first.
#let whose = state("whose", "")

#let foot-words = w.local-rules + " " + w.printed
#let foot = context {
  set text(size: 8.5pt * grow)
  line(length: 100%, stroke: 0.5pt)
  v(-0.45em)
  let name = if counter(page).get().first() > 1 { text(weight: "bold", whose.get()) + h(0.8em) }
  grid(columns: (1fr, auto), column-gutter: 1em, foot-words, align(right, [#name#w.page-word #counter(page).display()]))
}

#set page(paper: data.paper, margin: (x: 18mm, top: 12mm, bottom: 17mm), footer-descent: 25%, footer: foot)

#let head-leaf = leaf(2.5em)
#let fact(label, value) = (
  text(size: small, label),
  if value == "" { box(width: 9em, height: 1em, stroke: (bottom: 0.6pt)) } else { text(size: small, weight: "bold", value) },
)

// On a day's handout the code leads to the plan, and what it replaces stands in the title already.
#let the-code(h) = image(h.qr, width: 22mm, scaling: "pixelated", alt: h.url)

#let head(h) = {
  let coded = h.qr != ""
  let facts = (
    ..(if h.garden == "" { () } else { fact(w.garden, h.garden) }),
    ..fact(w.plan-day-label, w.plan-day),
    ..(if coded { ([], text(size: small, w.scan)) } else { (..fact(w.sample, h.sample), ..fact(w.id, h.id)) }),
  )
  let in-columns = grid(
    columns: if large { (3.4em, 1fr, 3.4em, 1fr) } else { (3.4em, 1fr) }, column-gutter: 0.7em, row-gutter: 0.5em, ..facts,
  )
  grid(
    columns: if coded { if large { (1fr, 22mm) } else { (1fr, 32%, 22mm) } } else if large { 1 } else { (1fr, 38%) },
    column-gutter: if coded { 1em } else { 1.5em }, row-gutter: 0.5em,
    {
      grid(columns: (2em, 1fr), column-gutter: 0.7em, head-leaf, {
        text(size: if h.name.clusters().len() > 60 { 1.2em } else if h.name.clusters().len() > 26 { 1.5em } else { 1.9em }, weight: "bold", h.name)
        v(0.65em, weak: true)
        text(size: 0.9em, h.extent)
      })
    },
    ..(if coded and large { (the-code(h),) } else { () }),
    grid.cell(colspan: if coded and large { 2 } else { 1 }, block(inset: (top: 0.2em), in-columns)),
    ..(if coded and not large { (the-code(h),) } else { () }),
  )
}

#let banner(h) = block(width: 100%, stroke: 1.8pt + black, radius: 3pt, clip: true, above: 0.8em, below: 0.7em, grid(
  columns: (if large { 34% } else { 27% }, 1fr), align: horizon,
  grid.cell(fill: black, inset: 0.75em, text(fill: white, size: 1.35em, weight: "bold", h.decision)),
  grid.cell(inset: (x: 0.9em, y: 0.7em), text(size: 1.06em, h.headline)),
))

#let record-of(later) = {
  [#tick-box(later: later) #text(size: small, w.done)]
  v(0.55em, weak: true)
  write-on(w.used, 4.6em)
  v(0.55em, weak: true)
  write-on(w.on, 6.4em)
}
#let (record-now, later-record) = (record-of(false), record-of(true))

#let dose(each) = block(
  width: 100%, breakable: false, inset: 0.7em, radius: 3pt, above: 0.6em, below: 0.6em,
  stroke: (thickness: if each.later { 0.8pt } else { 1.4pt }, dash: if each.later { "dashed" } else { none }),
  {
    let amount = {
      text(size: if each.later { 1.2em } else { 1.7em }, weight: "bold", each.weigh)
      linebreak()
      text(size: 0.9em, each.scoop)
    }
    let what = {
      text(weight: "bold", each.step)
      linebreak()
      text(weight: "bold", each.product)
      linebreak()
      text(size: small, (each.grade, each.rate, "").filter(t => t != "").join(". ") + ".")
      linebreak()
      [#text(size: 0.9em, w.when + ": ") #text(weight: "bold", each.when)]
    }
    let record = if each.later { later-record } else { record-now }
    if large { grid(columns: (1fr, auto), row-gutter: 0.7em, amount, record, grid.cell(colspan: 2, what)) }
    else { grid(columns: (8.2em, 1fr, 9.4em), column-gutter: 1em, amount, what, record) }
  },
)

#let pair(..blocks) = if large { for each in blocks.pos() { each } } else {
  block(above: 1.15em, breakable: false, grid(columns: (1fr, 1fr), column-gutter: 1.8em, ..blocks))
}
#let part(title, body) = { heading(level: 2, title); body }

#let small-table(..cells) = table(
  inset: (x: 3pt, y: 1.7pt), align: left,
  stroke: (x, y) => (top: if y == 1 { 0.8pt } else if y > 1 { 0.3pt + luma(60%) }, bottom: 0.3pt + luma(60%)),
  ..cells,
)
#let small-print(body) = { set text(size: 7.2pt * grow); set par(leading: 0.36em, spacing: 0.6em); body }

#let publications(h) = block({
  set text(size: 0.92em)
  text(weight: "bold", w.sources + ": ")
  for s in h.working.sources { text(weight: "bold", s.key); [ ]; s.text; [. ] }
})

#let working(h) = if h.working.shown.len() > 0 {
  block(breakable: large, above: 1em, small-print({
    heading(level: 2, w.working)
    let lead = (if h.need != "" { w.need + ": " + h.need + "." }, h.working.earlier).filter(each => each not in (none, ""))
    if lead.len() > 0 { block(lead.join(" ")) }
    small-table(
      columns: (1.8em, 1fr, 22%, 36%),
      table.header([], [*#w.figure*], [*#w.value*], [*#w.source*]),
      ..h.working.shown.map(r => (r.number, r.title, r.figure, r.sources)).flatten(),
    )
    if h.working.roomForSources { publications(h) }
    block(above: 1em, w.memory-note)
  }))
} else { block(above: 1em, small-print(w.memory-note)) }

#let every-step(h) = if every-step-too and h.working.rows.len() > 0 {
  pagebreak()
  heading(level: 2, w.working)
  small-print({ small-table(
    columns: (auto, 1.3fr, 1.6fr, 2fr, 1.3fr, 1fr),
    table.header([], [*#w.figure*], [*#w.formula*], [*#w.with*], [*#w.value*], [*#w.source*]),
    ..h.working.rows.map(r => (r.number, r.title, r.formula, r.terms, r.value, r.sources)).flatten(),
  )
  publications(h) })
}

#let handout(h) = {
  counter(page).update(1)
  let letters = h.name.clusters()
  whose.update(if letters.len() > 32 { letters.slice(0, 31).join() + "…" } else { h.name })
  show heading.where(level: 1): it => it.body
  head(h)
  banner(h)
  one-line(h.line)
  align(center, line-key(h.line))
  if h.readings.len() > 0 { block(above: 0.6em, for each in h.readings { text(size: 0.9em, each + ". ") }) }
  part(w.target, h.target)
  if h.means.len() > 0 { part(w.means, h.means.join(" ")) }
  if h.doses.len() > 0 {
    part(w.do, for each in h.doses { dose(each) })
    bullets(h.how)
    text(size: 0.9em, w.trust-scale + " " + h.overshoot)
    if h.safety.len() > 0 { block(above: 0.7em, [#danger #std.h(0.3em) #text(weight: "bold", w.read-safety)]) }
  }
  let do-not = part(w.do-not, bullets(h.doNot, mark: text(weight: "bold")[×]))
  let retest = if h.retest.days != "" { part(w.retest, { text(weight: "bold", h.retest.days + ". "); h.retest.why }) }
  let instead = if h.instead != "" { part(w.instead, h.instead + ".") }
  let find = if h.ask.len() > 0 { part(w.find-out, ticked(h.ask)) }
  let know = if h.know.len() > 0 { part(w.know, h.know.join(" ")) }
  let who = part(w.who, bullets((h.contact, w.who-laboratory, w.who-adviser, w.who-professional).filter(each => each != "")))
  let care = safety(w.safety, h.safety, columns: if large or h.safety.len() < 3 { 1 } else { 2 })
  if h.doses.len() > 0 {
    pair(do-not, { retest; instead })
    care
    pair({ find; know }, who)
  } else {
    care
    pair({ do-not; find; know }, { retest; instead; who })
  }
  working(h)
  every-step(h)
}

#for (index, h) in data.handouts.enumerate() {
  if index > 0 { pagebreak(weak: true) }
  handout(h)
}
`;

/** Handouts, one after the other, each from its own first page. */
export const handoutDesign = { name: 'The handout', source: base + phLineDesign + pages };
