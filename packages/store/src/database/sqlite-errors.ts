import type { Problem } from '@sorrel/engine/derivation';
import { problem } from '../problems.ts';

const codeOf = (error: unknown): string =>
  typeof error === 'object' && error !== null && 'code' in error ? String(error.code) : '';

/** What an error of SQLite or of the file system under it means for the person. */
export function explainSqlite(error: unknown, file: string): Problem | undefined {
  if (!(error instanceof Error)) return undefined;
  const code = codeOf(error);
  if (code === 'SQLITE_FULL' || code === 'ENOSPC' || code === 'EDQUOT') return problem('store.disk-full', 'file', file);
  if (code.startsWith('SQLITE_READONLY') || code === 'EROFS' || code === 'EACCES' || code === 'EPERM')
    return problem('store.read-only', 'file', file);
  if (code.startsWith('SQLITE_CORRUPT') || code === 'SQLITE_NOTADB')
    return problem('store.damaged', 'file', file, { reason: error.message });
  if (code.startsWith('SQLITE_BUSY') || code.startsWith('SQLITE_LOCKED')) return problem('store.busy', 'file', file);
  if (code.startsWith('SQLITE_IOERR')) return problem('store.write-failed', 'file', file, { reason: error.message });
  // better-sqlite3 says by a TypeError that the folder is missing.
  if (code.startsWith('SQLITE_CANTOPEN') || code === 'ENOENT' || code === 'ENOTDIR' || /directory/.test(error.message))
    return problem('store.cannot-open', 'file', file);
  return undefined;
}
