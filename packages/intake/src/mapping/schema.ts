import { bufferKinds, phMethods } from '@sorrel/engine/document';
import * as z from 'zod';
import { dateOrders } from '../cells/date.ts';
import { meanings, NOT_USED } from '../columns/meanings.ts';

const title = z.string().min(1).max(400);

const column = z.strictObject({
  title: title.describe('Title of the column, as it stands in the file; titles over several columns come first'),
  means: z.enum([NOT_USED, ...meanings]).describe('What its cells mean'),
  unit: z.string().optional().describe('Unit of its figures; "in the cells" when each cell carries its own'),
  method: z.enum(phMethods).optional().describe('How this pH was read'),
  buffer: z.enum(bufferKinds).optional().describe('Which buffer this buffer pH is of'),
  oxide: z.enum(['CaO', 'MgO', 'K2O']).optional().describe('Oxide that its figures count'),
});

/** How one sender writes its tables. Kept per sender, so that nothing is asked twice. */
export const senderMapping = z.strictObject({
  mapping: z.literal(1).describe('Version of this form'),
  sender: z.string().min(1).max(200).optional().describe('Who writes so'),
  laboratory: z.string().min(1).max(200).optional().describe('Name of the laboratory, for the tests'),
  region: z.string().min(1).max(200).optional().describe('State or country whose methods it uses'),
  decimal: z.enum(['point', 'comma']).optional().describe('Sign before the tenths'),
  dates: z.enum(dateOrders).optional().describe('Order of the parts of a day written in figures'),
  lime: z
    .strictObject({
      use: z.boolean().describe('Whether the lime it asks for counts as a reading of the soil'),
      depth: z.string().min(1).max(40).optional().describe('Depth it is meant for, with its unit'),
      target: z.number().min(4).max(9).optional().describe('pH it is meant to reach'),
      purity: z.number().min(10).max(260).optional().describe('Purity of lime it means, in percent'),
    })
    .optional(),
  columns: z.array(column).max(1000),
});

export type SenderMapping = z.output<typeof senderMapping>;
export type MappedColumn = SenderMapping['columns'][number];

/** The sender's mapping as JSON Schema 2020-12. */
export const senderMappingJsonSchema = (): Record<string, unknown> =>
  z.toJSONSchema(senderMapping, { target: 'draft-2020-12', io: 'input' });
