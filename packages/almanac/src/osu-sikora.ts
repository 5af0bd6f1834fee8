import { type Row, rows } from './generated/osu-sikora.ts';

export type OsuSikoraRow = Row;
/** Oregon lime rates by Sikora buffer pH and target. */
export const osuSikoraTable: readonly OsuSikoraRow[] = rows;
