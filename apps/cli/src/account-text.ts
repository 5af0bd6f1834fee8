import type { AccountEntry, AccountYear } from '@sorrel/engine/forecast';
import { print } from '@sorrel/engine/units';
import { hanging, pad, padLeft, pageWidth } from './layout.ts';
import { day, type Speaker } from './speak.ts';
import { timeWords } from './time-words.ts';

/** Entries below this share of the largest are put together: they would be bars of nothing. */
const SMALL = 0.004;

/** What pushed the pH of one place, year by year: a bar and a figure for each entry. */
export function accountText(
  years: readonly AccountYear[],
  left: { readonly lime: number; readonly sulfur: number },
  same: AccountYear | undefined,
  speaker: Speaker,
): string {
  const largest = Math.max(...years.flatMap(({ entries }) => Object.values(entries).map(Math.abs)), 1e-9);
  const parts = years.map((year) => yearText(year, largest, speaker));
  const rest = (['lime', 'sulfur'] as const).flatMap((kind) =>
    Math.abs(left[kind]) < 5e-4
      ? []
      : [hanging('', timeWords.accountLeft(speaker.rough(Math.abs(left[kind]), 'massPerArea'), kind), 2)],
  );
  if (rest.length > 0) parts.push(rest.join('\n'));
  if (same !== undefined) {
    const { start, end } = same.ph;
    parts.push(
      hanging(
        '',
        `${timeWords.accountSame} ${timeWords.accountSameText(signed(same.change, speaker), start.toFixed(2), end.toFixed(2))}`,
        2,
      ),
    );
  }
  return parts.join('\n\n');
}

function yearText(year: AccountYear, largest: number, speaker: Speaker): string {
  const rows = (Object.entries(year.entries) as [AccountEntry, number][])
    .filter(([, value]) => Math.abs(value) >= SMALL * largest)
    .sort((a, b) => b[1] - a[1]);
  const head = `  ${timeWords.accountYear(day(year.from), day(year.to))}   ${timeWords.accountPh(year.ph.start.toFixed(2), year.ph.end.toFixed(2))}`;
  const lines = rows.map(([entry, value]) => [timeWords.entries[entry], signed(value, speaker), value] as const);
  const all = [...lines, [timeWords.accountSum, signed(year.change, speaker), year.change] as const];
  const names = Math.max(...all.map(([name]) => name.length));
  const figures = Math.max(...all.map(([, figure]) => figure.length));
  const span = pageWidth() - names - figures - 9;
  const least = Math.min(0, ...all.map(([, , value]) => value));
  const most = Math.max(0, ...all.map(([, , value]) => value));
  const scale = span / Math.max(most - least, 1e-9);
  const zero = Math.round(-least * scale);
  const drawn = all.map(([name, figure, value], index) => {
    const last = index === all.length - 1;
    const length = Math.round(Math.abs(value) * scale);
    const fill = (speaker.unicode ? (last ? '▒' : '█') : last ? '=' : '#').repeat(length);
    const bar = value < 0 ? `${padLeft(fill, zero)}${middle(speaker)}` : `${' '.repeat(zero)}${middle(speaker)}${fill}`;
    return `  ${pad(name, names)}  ${padLeft(figure, figures)}  ${bar}`.trimEnd();
  });
  return [head, '', ...drawn.slice(0, -1), `  ${speaker.rule.repeat(names + figures + 2)}`, ...drawn.slice(-1)].join(
    '\n',
  );
}

const middle = (speaker: Speaker): string => (speaker.unicode ? '│' : '|');

const UNITS = { metric: 'g/m²', us: 'lb/100 sq ft' } as const;

/** An amount with its sign, to two figures; one unit for the whole account, so that its figures can be compared. */
export const signed = (value: number, speaker: Speaker): string =>
  `${value < 0 ? '-' : '+'}${print(Math.abs(value), 'massPerArea', speaker.system, { digits: 2, unit: UNITS[speaker.system] })}`;
