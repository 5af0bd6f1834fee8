/** The words of a handout as paragraphs, two pages each, nothing drawn, boxed or set in columns. */
export const plainDesign = {
  name: 'Plain pages',
  source: `
#let data = json("data.json")
#set document(date: none)
#set page(paper: "a4", margin: (x: 18mm, top: 12mm, bottom: 17mm))
#set text(font: ("Atkinson Hyperlegible Next", "DejaVu Sans"), size: 12pt, hyphenate: false)
#for (index, h) in data.handouts.enumerate() {
  if index > 0 { pagebreak() }
  par(h.name); par(h.extent); par(h.decision); par(h.headline)
  par(h.target); par(h.means.join(" "))
  for d in h.doses { par((d.step, d.product, d.weigh, d.scoop, d.grade, d.rate, d.when).join(". ")) }
  for t in h.how { par(t) }
  par(h.overshoot)
  pagebreak()
  for t in h.doNot { par(t) }
  par(h.retest.days + " " + h.retest.why)
  for t in h.safety { par(t) }
  par(h.know.join(" ")); for t in h.ask { par(t) }
  par(text(size: 7.2pt, h.working.shown.map(r => (r.number, r.title, r.figure, r.sources).join(" ")).join("; ")))
}
`,
};
