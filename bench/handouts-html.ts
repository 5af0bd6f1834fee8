import type { handoutContent } from '../packages/print/src/content/handout-content.ts';
import type { PhLine } from '../packages/print/src/content/ph-line.ts';

/** The words of one handout and its QR code as SVG. */
export type Content = ReturnType<typeof handoutContent> & { readonly code: string };

const style = `
@page { size: A4; margin: 12mm 18mm 17mm } * { box-sizing: border-box }
body { font: 12pt/1.25 sans-serif; margin: 0 } article { break-after: page } h1 { font-size: 23pt; margin: 0 }
h2 { font-size: 12.6pt; color: #6b2d1d; margin: 1em 0 .4em } p { margin: .4em 0 } ul { margin: 0; padding-left: 1em }
header { display: grid; grid-template-columns: 1fr 32% 22mm; gap: 1em } header svg { width: 22mm }
.banner { display: grid; grid-template-columns: 27% 1fr; border: 1.8pt solid; border-radius: 3pt; margin: .6em 0 }
.banner b { background: #000; color: #fff; padding: .7em; font-size: 16pt } .banner span { padding: .7em }
.dose { display: grid; grid-template-columns: 8em 1fr 9em; gap: 1em; border: 1.4pt solid; border-radius: 3pt; padding: .6em; margin: .5em 0 }
.dose b { font-size: 20pt } .two { display: grid; grid-template-columns: 1fr 1fr; gap: 1.8em } .box { border: 2pt solid; padding: .7em; margin: 1em 0 }
.second { break-before: page } table { font-size: 7.2pt; border-collapse: collapse; width: 100% } td { border-bottom: .3pt solid #888; padding: 1.7pt 3pt }
`;
const plainText = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
const listOf = (items: readonly string[]): string =>
  `<ul>${items.map((each) => `<li>${plainText(each)}</li>`).join('')}</ul>`;
const part = (title: string, body: string): string => `<section><h2>${title}</h2>${body}</section>`;

/** The pH line as our pages draw it: axis, hump, bracket, arrow and dot. */
function lineOf(line: PhLine): string {
  const at = (ph: number): number => (660 * (ph - line.low)) / (line.high - line.low);
  const row = line.rows[0];
  if (row === undefined) return '';
  const { today, wanted, aim } = row;
  const ticks = line.ticks.map(
    (ph) =>
      `<path d="M${at(ph)} 10V80" stroke="#999" stroke-dasharray="1 2"/><text x="${at(ph)}" y="96" text-anchor="middle">${ph}</text>`,
  );
  const hump =
    today === undefined
      ? ''
      : `<polygon fill="#ccc" stroke="#444" points="${at(today.from)},46 ${Array.from({ length: 29 }, (_, i) => {
          const z = (1.96 * (i - 14)) / 14;
          return `${at(today.mean + z * today.sd).toFixed(2)},${(46 - 28 * Math.exp((-z * z) / 2)).toFixed(2)}`;
        }).join(' ')} ${at(today.to)},46"/><circle cx="${at(today.mean)}" cy="46" r="5"/>`;
  const bracket =
    wanted === undefined
      ? ''
      : `<path fill="none" stroke="#6b2d1d" stroke-width="3" d="M${at(wanted.low) + 6} 32h-6v28h6M${at(wanted.high) - 6} 32h6v28h-6"/>`;
  const arrow =
    aim === undefined || today === undefined
      ? ''
      : `<path stroke="#000" stroke-width="3" d="M${at(today.mean)} 46H${at(aim) - 8}"/><polygon points="${at(aim)},46 ${at(aim) - 11},40 ${at(aim) - 11},52"/>`;
  return `<svg viewBox="-10 0 680 100" width="100%" font-size="14">${ticks.join('')}<path d="M0 46H660M0 80H660" stroke="#000"/>${hump}${bracket}${arrow}<text x="${at(today?.mean ?? 5)}" y="12" text-anchor="middle">${plainText(row.todayText)}</text><text x="${at(((wanted?.low ?? 5) + (wanted?.high ?? 6)) / 2)}" y="74" text-anchor="middle">${plainText(row.wantedText)}</text></svg>`;
}

const article = (h: Content): string => `<article>
<header><div><h1>${plainText(h.name)}</h1><p>${plainText(h.extent)}</p></div><div>${plainText(h.garden)}</div>${h.code}</header>
<div class="banner"><b>${plainText(h.decision)}</b><span>${plainText(h.headline)}</span></div>
${lineOf(h.line)}<p>${plainText(h.readings.join('. '))}</p>
${part('What is wanted, and why', `<p>${plainText(h.target)}</p>`)}${part('What it means', `<p>${plainText(h.means.join(' '))}</p>`)}
<h2>What to do</h2>${h.doses
  .map(
    (d) =>
      `<div class="dose"><div><b>${plainText(d.weigh)}</b><br>${plainText(d.scoop)}</div><div><strong>${plainText(d.step)}<br>${plainText(d.product)}</strong><br><small>${plainText(d.grade)}. ${plainText(d.rate)}</small><br>When: <strong>${plainText(d.when)}</strong></div><div>☐ done<br>really used ______<br>date ______</div></div>`,
  )
  .join('')}${listOf(h.how)}<p>${plainText(h.overshoot)}</p>
<div class="second two">${part('Do not add', listOf(h.doNot))}${part('Test again', `<p><b>${plainText(h.retest.days)}</b> ${plainText(h.retest.why)}</p>`)}</div>
<div class="box"><b>Safety first</b><div class="two">${listOf(h.safety.slice(0, Math.ceil(h.safety.length / 2)))}${listOf(h.safety.slice(Math.ceil(h.safety.length / 2)))}</div></div>
<div class="two">${part('Good to know about the test', `<p>${plainText(h.know.join(' '))}</p>${listOf(h.ask)}`)}${part('Who to ask', `<p>${plainText(h.contact)}</p>`)}</div>
<table>${h.working.shown.map((r) => `<tr><td>${r.number}<td>${plainText(r.title)}<td>${plainText(r.figure)}<td>${plainText(r.sources)}</tr>`).join('')}</table>
</article>`;

/** Pages of the same words and pictures for a browser to print. */
export const htmlOf = (contents: readonly Content[]): string =>
  `<!doctype html><meta charset="utf-8"><style>${style}</style>${contents.map(article).join('')}`;
