import { z } from '@hono/zod-openapi';
import { problemSchema } from '../http/problem-details.ts';
import { by, entryRef, id, receipt, version } from './shared.ts';

export const mostEntries = 1000;

export const batch = z
  .strictObject({
    together: z.boolean().optional().openapi({
      description:
        'True, and when left out: all entries or none. False: each for itself, in the order given; for a queue that was filled without a connection.',
    }),
    entries: z
      .array(entryRef)
      .min(1)
      .max(mostEntries)
      .openapi({ description: 'Entries with ids made by the writer. Sending one again is harmless.' }),
  })
  .openapi('EntryBatch');

export const outcomes = ['stored', 'known', 'refused', 'try-again'] as const;

export const outcome = z
  .object({
    id: z.string().optional().openapi({ description: 'Id of the entry, as far as it had one.' }),
    outcome: z.enum(outcomes).openapi({
      description:
        'stored: it is on the disk. known: it was there already. refused: it never will be, as the problems say. try-again: the record could not be reached.',
    }),
    number: z.int().min(1).optional(),
    problems: z.array(problemSchema).optional(),
  })
  .openapi('EntryOutcome');

export const batchAnswer = z.object({ version, results: z.array(outcome) }).openapi('EntryBatchAnswer');

export const since = z.object({
  since: z.coerce.number().int().min(0).optional().openapi({
    description: 'Only entries after this number; 0 when left out.',
  }),
  limit: z.coerce
    .number()
    .int()
    .min(1)
    .max(10_000)
    .optional()
    .openapi({ description: 'At most so many; 1000 when left out.' }),
});

export const entryPage = z
  .object({
    version,
    entries: z.array(z.object({ number: z.int().min(1), entry: entryRef })),
    more: z.boolean().openapi({ description: 'Whether there are further ones: ask again since the last number.' }),
  })
  .openapi('EntryPage');

export const undoRequest = z
  .strictObject({
    id: id.openapi({ description: 'Id of the entry that will say so; sent twice, it counts once.' }),
    by,
    at: z.string().optional().openapi({ description: 'When it was written; now when left out.' }),
  })
  .openapi('UndoRequest');

export const undone = receipt
  .extend({ entry: id.openapi({ description: 'The entry that was taken back.' }) })
  .openapi('Undone');

export const history = z
  .object({ entries: z.array(z.object({ number: z.int().min(1), entry: entryRef })) })
  .openapi('ThingHistory');
