/** The one pH line: a lane a place, with today smeared by its uncertainty, the bracket of what is wanted and the plan's arrow. */
export const phLineDesign = `
#let at(line, ph) = 100% * calc.clamp((ph - line.low) / (line.high - line.low), 0, 1)

// The hump holds 19 in 20 of the bell curve of today's pH; its cut ends are where certainty ends.
#let smear(line, today, middle, height) = {
  let points = range(-14, 15).map(i => {
    let z = 1.96 * i / 14
    (at(line, today.mean + z * today.sd), middle - height * calc.exp(-z * z / 2))
  })
  place(polygon(
    fill: luma(80%), stroke: 0.6pt + luma(25%),
    (at(line, today.from), middle), ..points, (at(line, today.to), middle),
  ))
}

#let bracket(line, wanted, middle, half) = {
  let pen = (paint: sorrel, thickness: 2.2pt, cap: "square", join: "miter")
  let (a, b) = (at(line, wanted.low), at(line, wanted.high))
  place(curve(stroke: pen, curve.move((a + 4pt, middle - half)), curve.line((a, middle - half)), curve.line((a, middle + half)), curve.line((a + 4pt, middle + half))))
  place(curve(stroke: pen, curve.move((b - 4pt, middle - half)), curve.line((b, middle - half)), curve.line((b, middle + half)), curve.line((b - 4pt, middle + half))))
}

#let arrow(line, from, to, middle) = {
  let (a, b) = (at(line, from), at(line, to))
  let back = if to > from { -1 } else { 1 }
  place(std.line(start: (a, middle), end: (b + back * 5pt, middle), stroke: 2.2pt + black))
  place(polygon(fill: black, (b, middle), (b + back * 8pt, middle - 4.2pt), (b + back * 8pt, middle + 4.2pt)))
}

#let lane(line, row, middle, hump, half) = {
  place(std.line(start: (0%, middle), end: (100%, middle), stroke: 0.5pt + luma(50%)))
  if "today" in row { smear(line, row.today, middle, hump) }
  if "wanted" in row { bracket(line, row.wanted, middle, half) }
  if "aim" in row and "today" in row { arrow(line, row.today.mean, row.aim, middle) }
  if "today" in row {
    place(dx: at(line, row.today.mean) - 3.6pt, dy: middle - 3.6pt, circle(radius: 3.6pt, fill: black, stroke: 1pt + white))
  }
}

#let gridlines(line, top, bottom) = for ph in line.ticks {
  place(std.line(start: (at(line, ph), top), end: (at(line, ph), bottom), stroke: (paint: luma(62%), thickness: 0.5pt, dash: "dotted")))
}

// A label centred over a pH that never leaves the picture.
#let label-at(line, ph, top, body) = {
  let t = (ph - line.low) / (line.high - line.low)
  let half = 5.5em
  if t < 0.17 { place(dx: at(line, ph) - 4pt, dy: top, body) }
  else if t > 0.83 { place(right, dx: -(100% - at(line, ph)) + 4pt, dy: top, body) }
  else { place(dx: at(line, ph) - half, dy: top, box(width: 2 * half, align(center, body))) }
}

#let axis-numbers(line, top) = for ph in line.ticks {
  let t = (ph - line.low) / (line.high - line.low)
  place(dx: at(line, ph) - 1em, dy: top, box(width: 2em, align(center, text(size: small, str(ph)))))
}

// Picture of one place, with its figures written on it.
#let one-line(line) = {
  let row = line.rows.first()
  let e = size
  let (middle, foot) = (3.3 * e, 5.9 * e)
  figure(kind: "ph-line", supplement: none, alt: line.alternative, block(width: 100%, height: 7.3 * e, inset: (x: 0.6em), align(left, {
    gridlines(line, middle - 1.9 * e, foot)
    lane(line, row, middle, 1.75 * e, 0.85 * e)
    let ph = if "today" in row { row.today.mean } else { (line.low + line.high) / 2 }
    label-at(line, ph, 0.2 * e, text(weight: "bold", row.todayText))
    if "wanted" in row { label-at(line, (row.wanted.low + row.wanted.high) / 2, middle + 1.2 * e, text(size: 0.9em, row.wantedText)) }
    place(dy: foot, std.line(length: 100%, stroke: 1pt))
    for ph in line.ticks { place(dx: at(line, ph), dy: foot - 2pt, std.line(angle: 90deg, length: 5pt, stroke: 1pt)) }
    axis-numbers(line, foot + 0.45 * e)
    place(dx: 1.2em, dy: foot + 0.45 * e, text(size: small, [← #line.sour]))
    place(right, dx: -1.2em, dy: foot + 0.45 * e, text(size: small, [#line.limy →]))
  })))
}

#let key-sign(width, body) = box(width: width, height: 1em, baseline: 20%, body)
#let line-key(line) = {
  set text(size: small)
  let mini = (low: 0, high: 1)
  let gap = h(0.4em)
  let signs = ()
  if line.rows.any(row => "today" in row) {
    signs.push({ key-sign(0.8em, place(dy: 0.25em, circle(radius: 3.2pt, fill: black))); gap; line.key.today })
    signs.push({ key-sign(2.4em, smear(mini, (mean: 0.5, sd: 0.22, from: 0.07, to: 0.93), 0.95em, 0.8em)); gap; line.key.smear })
  }
  signs.push({ key-sign(2.2em, bracket(mini, (low: 0.08, high: 0.92), 0.5em, 0.42em)); gap; line.key.wanted })
  if line.rows.any(row => "aim" in row) { signs.push({ key-sign(2.4em, arrow(mini, 0, 1, 0.5em)); gap; line.key.plan }) }
  signs.map(box).join(h(1.4em))
}

// Picture of a whole garden: the same lane, one a place.
#let shared-line(line) = {
  let height = 27pt
  let scale = block(width: 100%, height: 13pt, axis-numbers(line, 1pt))
  show figure: set block(breakable: true)
  figure(kind: "ph-line", supplement: none, alt: line.alternative, align(left, {
    grid(
      columns: (27%, 1fr, auto), column-gutter: 12pt, align: (left + horizon, left + horizon, left + horizon),
      row-gutter: 0pt,
      grid.header(text(size: small, weight: "bold", w.ph), scale, [], grid.hline(stroke: 0.8pt)),
      ..line.rows.map(row => (
        block(inset: (y: 3pt), text(size: 0.85em, weight: "bold", row.name)),
        block(width: 100%, height: height, {
          gridlines(line, 0pt, height)
          lane(line, row, 16pt, 12.5pt, 8pt)
          if "today" not in row { label-at(line, line.low + 0.12 * (line.high - line.low), 4pt, text(size: small, style: "italic", row.todayText)) }
        }),
        text(size: 0.85em, row.verdict),
      )).flatten(),
      grid.hline(stroke: 0.8pt),
    )
    block(above: 0.8em, line-key(line))
  }))
}
`;
