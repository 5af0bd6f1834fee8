import type { Choice, Problem } from '@sorrel/engine/document';
import { hanging } from './layout.ts';
import type { Speaker } from './speak.ts';
import { words } from './words.ts';

/** Problems for people: place and field, what is wrong, what was typed, how to mend it; then what was left out. */
export function problemsText(problems: readonly Problem[], skipped: readonly string[]): string {
  const lines = [`${words.problemsTitle(problems.length)}:`, ''];
  for (const each of problems) {
    const where = [each.place, each.field].filter((part) => part !== undefined && part !== '').join(', ');
    lines.push(hanging('- ', `${where}: ${each.message}`, 0));
    const typed = typedText(each.value);
    if (typed !== undefined && !each.message.includes(typed)) lines.push(hanging(`${words.value}: `, typed, 2));
    lines.push(hanging(`${words.fix}: `, each.fix, 2));
  }
  if (skipped.length > 0) lines.push('', `${words.leftOut}:`, '', ...skipped.map((each) => hanging('- ', each, 0)));
  return `${lines.join('\n')}\n`;
}

/** What was typed, when it is short enough to show. */
function typedText(value: unknown): string | undefined {
  if (value === undefined || value === null || value === '' || typeof value === 'object') return undefined;
  const text = String(value);
  return text.length > 80 ? `${text.slice(0, 77)}...` : text;
}

/** What nobody wrote and was taken for granted. */
export function choicesText(choices: readonly Choice[], speaker: Speaker): string {
  if (choices.length === 0) return '';
  const lines = choices.map((each) =>
    hanging('- ', `${each.place === undefined ? '' : `${each.place}: `}${speaker.sayRoughly(each.message)}`, 2),
  );
  return `${words.choicesTitle}\n${lines.join('\n')}\n`;
}
