import type { Server, ServerResponse } from 'node:http';

/** How long a stop waits for requests under way. */
const patience = 10_000;

/**
 * Stops taking connections, lets the requests under way finish, and closes. Connections that a browser keeps open
 * without asking for anything are closed at once; after ten seconds all others are too.
 */
export function drain(server: Server, underWay: ReadonlySet<ServerResponse>): Promise<void> {
  return new Promise((resolve) => {
    // Whoever still gets an answer is told to connect anew for the next one.
    for (const res of underWay) if (!res.headersSent) res.setHeader('connection', 'close');
    const idle = setInterval(() => server.closeIdleConnections(), 50);
    const enough = setTimeout(() => server.closeAllConnections(), patience);
    server.close(() => {
      clearInterval(idle);
      clearTimeout(enough);
      resolve();
    });
    server.closeIdleConnections();
  });
}
