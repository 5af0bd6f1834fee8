/** What all pages share: paper, letters, headings, boxes to tick and lines to write on. Reads `data.json`. */
export const base = `
#let data = json("data.json")
// Functions carry every value they name; the whole data must not be among them, or each call weighs it anew.
#let w = data.words
#let large = data.size > 14
#let size = data.size * 1pt
#let grow = data.size / 12
#let sorrel = rgb("#6b2d1d")
#let faint = luma(60%)
#let small = 0.8em

#set document(title: data.title, date: none)
#set text(font: ("Atkinson Hyperlegible Next", "DejaVu Sans"), size: size, lang: data.language, hyphenate: false)
#set par(leading: 0.5em, spacing: 0.7em, justify: false)

#let leaf(height) = box(width: height * 0.8, height: height, baseline: 12%, curve(
  fill: sorrel,
  curve.move((50%, 0%)),
  curve.cubic((78%, 24%), (76%, 50%), (68%, 62%)),
  curve.cubic((82%, 62%), (96%, 70%), (100%, 84%)),
  curve.cubic((84%, 78%), (68%, 80%), (54%, 76%)),
  curve.line((53%, 100%)),
  curve.line((47%, 100%)),
  curve.line((46%, 76%)),
  curve.cubic((32%, 80%), (16%, 78%), (0%, 84%)),
  curve.cubic((4%, 70%), (18%, 62%), (32%, 62%)),
  curve.cubic((24%, 50%), (22%, 24%), (50%, 0%)),
  curve.close(),
))

#show heading.where(level: 2): set block(above: 1em, below: 0.5em, sticky: true)
#show heading.where(level: 2): set text(size: 1.05em, weight: "bold", fill: sorrel)

#let tick-box(size: 1em, later: false) = box(baseline: 15%, rect(
  width: size, height: size,
  stroke: (thickness: 1.1pt, dash: if later { "densely-dashed" } else { none }),
))
#let write-on(label, width) = box({
  text(size: small, label)
  h(0.35em)
  box(width: width, height: 1.2em, baseline: 0.1em, stroke: (bottom: 0.7pt))
})
// Paragraphs that hang on their mark: inside columns the typesetter's own lists cost ten times as much.
#let hung(mark, body) = block(spacing: 0.45em, par(hanging-indent: 1.05em, box(width: 1.05em, mark) + body))
#let bullets(items, mark: [–]) = for each in items { hung(mark, each) }
#let ticked(items) = for each in items { block(spacing: 0.55em, par(hanging-indent: 1.5em, box(width: 1.5em, tick-box(size: 0.85em)) + each)) }
#let danger = box(baseline: 20%, width: 1.35em, height: 1.2em, {
  place(polygon(fill: black, (50%, 0%), (100%, 100%), (0%, 100%)))
  place(dx: 47%, dy: 34%, rect(width: 8%, height: 34%, fill: white))
  place(dx: 46%, dy: 76%, rect(width: 10%, height: 11%, fill: white))
})
#let safety(title, items, columns: 1) = if items.len() > 0 {
  block(width: 100%, breakable: large, above: 1em, below: 1em, stroke: 2pt + black, radius: 3pt, inset: 0.7em, {
    block(sticky: true, below: 0.6em)[#danger #h(0.3em) #text(weight: "bold", title)]
    if columns == 1 { bullets(items) } else {
      let half = calc.ceil(items.len() / 2)
      grid(columns: (1fr, 1fr), column-gutter: 1.2em, bullets(items.slice(0, half)), bullets(items.slice(half)))
    }
  })
}
`;
