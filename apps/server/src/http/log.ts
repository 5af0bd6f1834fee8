import type { MiddlewareHandler } from 'hono';
import { routePath } from 'hono/route';
import { type DestinationStream, type Logger, pino } from 'pino';

export type { Logger };

/** A write for each line would cost more than the answer it tells of. */
const buffered = { fd: 2, sync: false, minLength: 4096, periodicFlush: 250 };

/**
 * One JSON object a line. `time` is ISO 8601, `level` a word.
 *
 * @param level least level written; `silent` for none
 * @param to where lines go; standard error by default
 */
export function createLog(level: string, to?: DestinationStream): Logger {
  const options = {
    level,
    base: null,
    timestamp: () => `,"time":"${new Date().toISOString()}"`,
    formatters: { level: (label: string) => ({ level: label }) },
  };
  return to === undefined ? pino(options, pino.destination(buffered)) : pino(options, to);
}

/**
 * A line for each answered request. It names the route, not the address, because addresses hold garden ids and the
 * secret of a calendar feed; it never holds anything that was sent.
 */
export function requestLog(log: Logger): MiddlewareHandler {
  return async (c, next) => {
    c.set('log', log);
    const start = performance.now();
    await next();
    const { status } = c.res;
    log[status >= 500 ? 'error' : 'info'](
      {
        method: c.req.method,
        route: routePath(c),
        status,
        ms: Math.round((performance.now() - start) * 100) / 100,
      },
      'request',
    );
  };
}
