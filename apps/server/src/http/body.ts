import type { MiddlewareHandler } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { words } from '../words.ts';
import { refuse } from './problem-details.ts';

const MiB = 1024 * 1024;
/** Most that may be sent at once. A whole garden of twenty years with every entry fits into an import. */
export const limits = { entries: 2 * MiB, import: 64 * MiB, photo: 16 * MiB } as const;

/** Refuses a larger body, by its announced length or, when none is announced, as soon as it has grown too long. */
export const atMost = (limit: keyof typeof limits): MiddlewareHandler =>
  bodyLimit({
    maxSize: limits[limit],
    onError: () => refuse('too-large', words.tooLarge(`${limits[limit] / MiB} MiB`)),
  });

const typeOf = (header: string | undefined): string => (header ?? 'nothing').split(';')[0]?.trim().toLowerCase() ?? '';

/** Takes JSON only. A form on another site cannot send that, so this also keeps such forms out. */
export const jsonOnly: MiddlewareHandler = async (c, next) => {
  const type = typeOf(c.req.header('content-type'));
  return type === 'application/json' ? next() : refuse('wrong-type', words.wantsJson(type));
};

export const photoTypes = ['image/jpeg', 'image/png', 'image/webp', 'image/avif'] as const;

export const photoOnly: MiddlewareHandler = async (c, next) => {
  const type = typeOf(c.req.header('content-type'));
  return (photoTypes as readonly string[]).includes(type) ? next() : refuse('wrong-type', words.wantsImage(type));
};
