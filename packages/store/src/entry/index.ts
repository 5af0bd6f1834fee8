// What entries are, without any database: this part also runs in a browser.
export { canonical } from './canonical.ts';
export { checkEntry } from './check-entry.ts';
export {
  type AddEntry,
  allKinds,
  type Content,
  type CorrectEntry,
  type Entry,
  entry,
  type Kind,
  type RemoveEntry,
  type UndoEntry,
} from './entry.ts';
export { newId } from './ids.ts';
