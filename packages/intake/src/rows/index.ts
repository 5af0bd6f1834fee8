export { type Cutter, cutter, eachRecord, type Run, recordsOf } from '../records/cut.ts';
export { type Splitter, splitter, type TableRecord } from '../records/split.ts';
export { mendHeader, mendLine } from './mend-list.ts';
export { type MappedReader, mappedReader, type RowOutcome, type SaidCells } from './reader.ts';
export { mendColumns } from './returned.ts';
export type { RowsSetup, UsedColumn } from './setup.ts';
export type { Note } from './steps.ts';
