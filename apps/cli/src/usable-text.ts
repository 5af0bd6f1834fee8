import type { Message } from '@sorrel/engine/derivation';
import { nutrientName, type PlaceNutrients } from '@sorrel/engine/nutrients';
import { hanging, paragraph } from './layout.ts';
import { nutrientWords } from './nutrients-words.ts';
import { phText, type Speaker } from './speak.ts';
import { tableText } from './table-text.ts';
import { words } from './words.ts';

/** What the pH of one place does to its nutrients, for people. */
export function usableText(found: PlaceNutrients, speaker: Speaker): string {
  const said = new Set<string>();
  const once = (messages: readonly Message[]): string[] =>
    messages.map(speaker.say).filter((text) => !said.has(text) && said.add(text));
  const planned = found.planned === undefined ? undefined : phText(found.planned);
  const [nutrient, today, then, why] = nutrientWords.columns;
  const marked = (word: string, basis: string) => (basis === 'read' ? word : `${word}${words.memoryMark}`);
  const table = tableText(
    [
      { title: nutrient },
      { title: today },
      ...(planned === undefined ? [] : [{ title: then }]),
      { title: why, flexible: true },
    ],
    found.lines.map((line) => [
      nutrientName(line.nutrient),
      marked(line.today.word, line.today.basis),
      ...(line.planned === undefined ? [] : [marked(line.planned.word, line.planned.basis)]),
      speaker.say(line.why),
    ]),
    { indent: 2, rule: speaker.rule },
  );
  const parts = [
    paragraph(nutrientWords.today(phText(found.today), planned), 2, 0),
    table,
    list(
      nutrientWords.test,
      found.verdicts.map(
        (each) =>
          `${nutrientName(each.nutrient)}: ${nutrientWords.verdicts[each.verdict]}${each.basis === 'read' ? '' : words.memoryMark}. ${[...each.reasons, ...each.actions].map(speaker.say).join(' ')}`,
      ),
    ),
    list(
      nutrientWords.change,
      found.lines.flatMap((line) => (line.change.length === 0 ? [] : [line.change.map(speaker.say).join(' ')])),
    ),
    list(nutrientWords.heed, once(found.messages)),
  ];
  return `${parts.filter((part) => part !== '').join('\n\n')}\n`;
}

const list = (title: string, items: readonly string[]): string =>
  items.length === 0 ? '' : [`  ${title}`, ...items.map((each) => hanging('- ', each, 4))].join('\n');
