import { z } from '@hono/zod-openapi';
import type { Problem } from '@sorrel/engine/derivation';
import type { Context } from 'hono';
import { problemKinds } from '../words.ts';

export type ProblemKind = keyof typeof problemKinds;

/** One wrong entry: the engine's `Problem`, as it travels. */
export const problemSchema = z
  .object({
    code: z.string(),
    place: z.string().optional(),
    field: z.string(),
    value: z.unknown().optional(),
    message: z.string(),
    fix: z.string(),
  })
  .openapi('Problem', { description: 'One wrong entry: which field, what stood there, and how to mend it.' });

/** RFC 9457, with the list of wrong entries as an extension. */
export const problemDetailsSchema = z
  .object({
    type: z.string(),
    title: z.string(),
    status: z.int().min(400).max(599),
    detail: z.string(),
    problems: z.array(problemSchema).optional(),
  })
  .openapi('ProblemDetails', { description: 'Why a request was refused (RFC 9457).' });

/** The content of an error answer in the OpenAPI document. */
export const problemContent = (description: string) => ({
  description,
  content: { 'application/problem+json': { schema: problemDetailsSchema } },
});

/** A refusal thrown inside a route; `onError` turns it into the answer. */
export class Refusal extends Error {
  constructor(
    readonly kind: ProblemKind,
    readonly detail: string,
    readonly problems: readonly Problem[] = [],
  ) {
    super(detail);
  }
}

export const problemHeaders = {
  'content-type': 'application/problem+json; charset=utf-8',
  'cache-control': 'no-store',
};

/** Writes a refusal. The kinds, their titles and statuses stand in `words.ts`. */
export function refuse(kind: ProblemKind, detail: string, problems: readonly Problem[] = []): Response {
  const { status } = problemKinds[kind];
  // What was too large or of the wrong kind is not read to its end, so the connection is of no further use.
  const headers = status === 413 || status === 415 ? { ...problemHeaders, connection: 'close' } : problemHeaders;
  return new Response(JSON.stringify(problemDetails(kind, detail, problems)), { status, headers });
}

export function problemDetails(kind: ProblemKind, detail: string, problems: readonly Problem[] = []) {
  const { status, title } = problemKinds[kind];
  return { type: `/api/problems#${kind}`, title, status, detail, ...(problems.length === 0 ? {} : { problems }) };
}

/** Answers whatever a route threw; what nobody foresaw is logged whole but told without its inside. */
export function onError(error: Error, c: Context): Response {
  if (error instanceof Refusal) return refuse(error.kind, error.detail, error.problems);
  const status = (error as { status?: unknown }).status;
  if (status === 400) return refuse('not-json', error.message);
  if (status === 413) return refuse('too-large', error.message);
  c.get('log')?.error({ err: { name: error.name, message: error.message, stack: error.stack } }, 'unforeseen error');
  return refuse('broken', 'The server failed at this request. Nothing you entered was changed by it. Try again.');
}
