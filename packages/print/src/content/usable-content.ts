import type { MessageCode } from '@sorrel/almanac/words';
import { isOfLines, nutrientName, plannedNutrients, usablePicture } from '@sorrel/engine/nutrients';
import type { Place, Recommendation } from '@sorrel/engine/plan';
import { printPh } from '@sorrel/engine/units';
import type { Sheet } from '../page.ts';
import { usablePictureSvg } from '../picture/usable-picture.ts';
import { once, type Speaker } from '../speaker.ts';
import { extent } from './place-words.ts';

/** The words and figures of a page that says what the plants of a place can use. */
export function usableContent(place: Place, advice: Recommendation, speaker: Speaker): Sheet {
  const { word } = speaker;
  const found = plannedNutrients(place, advice);
  const head = { title: word('print.usable-title', { place: place.name }), under: extent(place, speaker) };
  if (found === undefined)
    return {
      ...head,
      first: [{ title: word('print.usable-find-out'), lead: word('print.usable-no-ph') }],
      parts: [],
      sources: [],
      memory: false,
    };
  const { today, planned, verdicts, lines } = found;
  const mark = word('print.memory-mark');
  const phs =
    planned === undefined
      ? word('print.usable-today', { ph: printPh(today) })
      : word('print.usable-today-planned', { ph: printPh(today), planned: printPh(planned) });
  const change = lines.flatMap((line) => (line.change.length === 0 ? [] : [once(speaker, line.change).join(' ')]));
  const heed = once(
    speaker,
    found.messages.filter((message) => !isOfLines(message)),
  );
  const picture = usablePicture(place.medium, { today, ...(planned === undefined ? {} : { planned }) });
  return {
    ...head,
    first: [
      verdicts.length === 0
        ? { title: word('print.usable-test'), lead: `${phs} ${word('print.usable-no-levels')}` }
        : {
            title: word('print.usable-test'),
            lead: phs,
            table: {
              widths: ['1.1', '1.2', '5'],
              head: [word('print.usable-nutrient'), word('print.usable-verdict'), word('print.usable-why')],
              rows: verdicts.map((each) => [
                capital(nutrientName(each.nutrient)),
                word(`print.usable-verdict-${each.verdict.replaceAll(' ', '-')}` as MessageCode) +
                  (each.basis === 'memory' ? mark : ''),
                once(speaker, [...each.reasons, ...each.actions]).join(' '),
              ]),
            },
          },
      ...(heed.length === 0 ? [] : [{ title: word('print.usable-heed'), items: heed }]),
    ],
    drawing: {
      svg: usablePictureSvg(picture, { system: speaker.system, letters: 'Atkinson Hyperlegible Next' }),
      alternative: lines
        .map((line) =>
          word('print.usable-said', {
            nutrient: nutrientName(line.nutrient),
            word: word(`nutrients.word-${line.today.word}`),
          }),
        )
        .join(' '),
    },
    parts: [
      ...(change.length === 0 ? [] : [{ title: word('print.usable-change'), items: change }]),
      {
        title: word('print.usable-lines'),
        table: {
          widths: ['1.1', 'auto', ...(planned === undefined ? [] : ['auto']), '5'],
          head: [
            word('print.usable-nutrient'),
            word('print.usable-now'),
            ...(planned === undefined ? [] : [word('print.usable-then')]),
            word('print.usable-why'),
          ],
          rows: lines.map((line) => [
            capital(nutrientName(line.nutrient)),
            word(`nutrients.word-${line.today.word}`) + (line.today.basis === 'memory' ? mark : ''),
            ...(planned === undefined
              ? []
              : [line.planned === undefined ? '–' : word(`nutrients.word-${line.planned.word}`)]),
            speaker.say(line.why),
          ]),
        },
      },
      {
        title: word('print.usable-doubt'),
        items: once(speaker, [...found.messages.filter(isOfLines), { code: 'nutrients.chart-origin' }]),
      },
    ],
    sources: [
      ...verdicts.flatMap(({ sources }) => sources),
      ...lines.flatMap((line) => line.today.sources),
      'hartemink-barrow-2023',
      'barrow-hartemink-2023',
    ],
    memory: verdicts.some(({ basis }) => basis === 'memory') || lines.some((line) => line.today.basis === 'memory'),
  };
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
