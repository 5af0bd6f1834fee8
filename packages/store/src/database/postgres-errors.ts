import type { Problem } from '@sorrel/engine/derivation';
import { problem } from '../problems.ts';

const network = new Set(['ECONNREFUSED', 'ECONNRESET', 'EPIPE', 'ETIMEDOUT', 'ENOENT', 'ENOTFOUND', 'EAI_AGAIN']);

/** What an error of PostgreSQL or of the way to it means for the person. Codes: PostgreSQL manual, appendix A. */
export function explainPostgres(error: unknown, where: string): Problem | undefined {
  if (!(error instanceof Error)) return undefined;
  const code = 'code' in error ? String(error.code) : '';
  if (network.has(code) || code.startsWith('08') || code.startsWith('57P'))
    return problem('store.unreachable', 'database', where);
  if (/^Connection terminated|timeout exceeded|Client has encountered a connection error/.test(error.message))
    return problem('store.unreachable', 'database', where);
  if (code.startsWith('28') || code === '3D000' || code === '42501') return problem('store.refused', 'database', where);
  if (code === '53100') return problem('store.disk-full', 'database', where);
  if (code === '25006') return problem('store.read-only', 'database', where);
  if (code.startsWith('53') || code.startsWith('55P') || code.startsWith('40'))
    return problem('store.busy', 'database', where);
  if (code.startsWith('XX') || code === '58030')
    return problem('store.damaged', 'database', where, { reason: error.message });
  return undefined;
}
