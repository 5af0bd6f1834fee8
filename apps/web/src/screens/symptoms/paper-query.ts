import type { Answers } from '@sorrel/engine/nutrients';

interface Seen {
  readonly date: string;
  readonly plant?: string | undefined;
  readonly answers?: Answers | undefined;
  readonly weeds?: readonly string[] | undefined;
  readonly note?: string | undefined;
}

/** What was seen, as the address of its paper holds it. */
export const paperQuery = ({ date, plant, answers, weeds, note }: Seen): Readonly<Record<string, string>> => ({
  seen: date,
  ...(plant === undefined || plant === '' ? {} : { plant }),
  ...Object.fromEntries(Object.entries(answers ?? {}).filter(([, answer]) => answer !== undefined)),
  ...(weeds === undefined || weeds.length === 0 ? {} : { weeds: weeds.join(',') }),
  ...(note === undefined || note.trim() === '' ? {} : { note: note.trim().slice(0, 500) }),
});
