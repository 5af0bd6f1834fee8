import * as z from 'zod';

/** Materials that share the same published limits for one application. */
export const limitGroup = z.enum(['lime', 'caustic lime', 'wood ash', 'sulfur', 'iron sulfate', 'aluminium sulfate']);
export type LimitGroup = z.output<typeof limitGroup>;
