import type { Server } from 'node:http';
import { portsTried, usualPort } from '../options.ts';
import { words } from '../words.ts';

const codeOf = (error: unknown): string | undefined => (error as NodeJS.ErrnoException).code;

function tryPort(server: Server, port: number, host: string): Promise<number> {
  return new Promise((resolve, reject) => {
    const failed = (error: Error) => {
      server.off('listening', listening);
      reject(error);
    };
    const listening = () => {
      server.off('error', failed);
      const address = server.address();
      resolve(typeof address === 'object' && address !== null ? address.port : port);
    };
    server.once('error', failed);
    server.once('listening', listening);
    server.listen(port, host);
  });
}

/**
 * Listens at a port somebody chose, or at the usual one or the next that is free.
 *
 * @returns the port
 * @throws Error with a sentence for the person when the port, or every port tried, is taken
 */
export async function listen(server: Server, host: string, port: number | undefined): Promise<number> {
  if (port !== undefined)
    try {
      return await tryPort(server, port, host);
    } catch (error) {
      throw codeOf(error) === 'EADDRINUSE' ? new Error(words.portTaken(port)) : error;
    }
  for (let at = usualPort; at < usualPort + portsTried; at++)
    try {
      return await tryPort(server, at, host);
    } catch (error) {
      if (codeOf(error) !== 'EADDRINUSE') throw error;
    }
  throw new Error(words.noFreePort(usualPort, usualPort + portsTried - 1));
}
