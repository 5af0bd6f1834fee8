// What a record comes to, without any database: this part also runs in a browser.
export { type Assembled, assembleRecord } from './assemble.ts';
export { emptyRecord, type GardenRecord, thingsOfKind, withEntries } from './record.ts';
export { entriesFromDocument } from './split.ts';
export { type Numbered, stands, type Thing, type ThingOf, takenBack, thingsOf } from './things.ts';
