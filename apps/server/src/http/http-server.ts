import { createServer, type Server, type ServerResponse } from 'node:http';
import { getRequestListener } from '@hono/node-server';
import type { Room } from '../room.ts';
import { problemDetails, problemHeaders } from './problem-details.ts';
import { setSecurityHeaders, whyRefused } from './security.ts';

/**
 * The HTTP server around the routes: every answer gets the security headers, and what is not for this server, or was
 * sent by another site's page, never reaches a route.
 */
export function createHttpServer(
  answer: (request: Request) => Response | Promise<Response>,
  { log, stopping }: Pick<Room, 'log' | 'stopping'>,
  hosts: ReadonlySet<string>,
): { readonly server: Server; readonly underWay: ReadonlySet<ServerResponse> } {
  const underWay = new Set<ServerResponse>();
  const listener = getRequestListener(answer);
  const server = createServer(
    { maxHeaderSize: 16 * 1024, requestTimeout: 120_000, headersTimeout: 20_000 },
    (req, res) => {
      setSecurityHeaders(res);
      // Whoever still gets an answer is told to connect anew for the next one.
      if (stopping()) res.setHeader('connection', 'close');
      const refused = whyRefused(req, hosts);
      if (refused === undefined) {
        underWay.add(res);
        res.once('close', () => underWay.delete(res));
        return listener(req, res);
      }
      const details = problemDetails(...refused);
      log.warn({ method: req.method, status: details.status }, refused[0]);
      res.writeHead(details.status, problemHeaders).end(JSON.stringify(details));
      // What else it sends is not read.
      req.resume();
      return undefined;
    },
  );
  server.keepAliveTimeout = 10_000;
  return { server, underWay };
}
