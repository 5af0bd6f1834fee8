import { OpenAPIHono, type RouteConfig, type RouteHandler } from '@hono/zod-openapi';
import type { Context } from 'hono';
import { words } from '../words.ts';
import { entryProblems } from './entry-problems.ts';
import type { Logger } from './log.ts';
import { refuse } from './problem-details.ts';

export type Env = { Variables: { log: Logger } };
export type Api = OpenAPIHono<Env>;

/** An empty API whose schemas refuse with problem details. */
export function createApi(): Api {
  return new OpenAPIHono<Env>({
    defaultHook: async (result, c) => {
      if (result.success) return undefined;
      const sent =
        result.target === 'json'
          ? await c.req.json().catch(() => undefined)
          : result.target === 'param'
            ? c.req.param()
            : c.req.query();
      const [kind, detail] =
        result.target === 'param'
          ? (['not-found', words.notFound(c.req.path)] as const)
          : (['bad-entry', words.badRequest] as const);
      return refuse(kind, detail, entryProblems(result.error, sent));
    },
  });
}

/** Serves a described route; what its handler gets is checked by the route's schemas, refusals are thrown. */
export function serve<R extends RouteConfig>(
  api: Api,
  route: R,
  handler: (c: Parameters<RouteHandler<R, Env>>[0]) => Response | Promise<Response>,
): void {
  api.openapi(route, handler as unknown as RouteHandler<R, Env>);
}

/**
 * Serves a described GET route without checking its parameters, for what is read most and looks them up anyway: what is
 * not there is refused all the same.
 */
export function serveUnchecked(
  api: Api,
  route: RouteConfig & { getRoutingPath(): string },
  handler: (c: Context<Env, string>) => Response | Promise<Response>,
): void {
  api.openAPIRegistry.registerPath(route);
  api.get(route.getRoutingPath(), handler);
}

/** A JSON answer that must not be kept. */
export const json = (value: unknown, status = 200, headers: Record<string, string> = {}): Response =>
  new Response(JSON.stringify(value), {
    status,
    headers: { 'content-type': 'application/json; charset=utf-8', 'cache-control': 'no-store', ...headers },
  });
