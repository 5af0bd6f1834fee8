import { v7 } from 'uuid';
import * as z from 'zod';

/** Id of an entry, made by whoever writes it: a UUID of version 7 (RFC 9562) in small letters. */
export const id = z
  .uuidv7()
  .lowercase()
  .meta({ description: 'A UUID of version 7.', examples: ['01890a5d-ac96-774b-bcce-b302099a8057'] });

/**
 * Makes an id. The clock is the caller's; so is chance, when a test needs the same ids again.
 *
 * @param now milliseconds since 1970
 * @param random 16 bytes; the platform's own secure randomness when left out
 */
export const newId = (now: number, random?: Uint8Array): string =>
  v7(random === undefined ? { msecs: now } : { msecs: now, random });
