import { createHmac, randomBytes, timingSafeEqual } from 'node:crypto';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * The key kept in the data folder, made at the first start. Calendar addresses are made with it: deleting the file
 * makes all of them invalid.
 */
export function readSecret(folder: string): Uint8Array {
  const file = join(folder, 'secret');
  mkdirSync(folder, { recursive: true });
  try {
    // Never writes over a key that another process has just made.
    writeFileSync(file, randomBytes(32).toString('hex'), { flag: 'wx', mode: 0o600 });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
  }
  return Buffer.from(readFileSync(file, 'utf8').trim(), 'hex');
}

/** Last part of the address of a garden's calendar: nobody can guess it who has not been told (128 bits). */
export const calendarToken = (secret: Uint8Array, garden: string): string =>
  createHmac('sha256', secret).update(`calendar:${garden}`).digest().subarray(0, 16).toString('base64url');

export function isCalendarToken(secret: Uint8Array, garden: string, token: string): boolean {
  const wanted = Buffer.from(calendarToken(secret, garden));
  const given = Buffer.from(token);
  return wanted.length === given.length && timingSafeEqual(wanted, given);
}
