import * as z from 'zod';
import { basis, list, sources, text } from './columns.ts';

/** How often a cause gives an answer to a question. The signs are published; the shares are judgement, the rest follows the rows of `any`. */
export const row = z.strictObject({
  cause: text,
  question: z.enum(['leaves', 'pattern', 'spots', 'growth', 'roots', 'fruit', 'recent']),
  answers: list.transform((cells) =>
    cells.map((cell) => {
      const [answer = '', share = ''] = cell.split(':');
      return { answer, share: Number(share) };
    }),
  ),
  sources,
  basis,
});
