import { join, resolve } from 'node:path';
import { words } from './words.ts';

/** What a server is started with. */
export interface ServerOptions {
  /** Address listened at; this computer only when left out. */
  readonly host?: string;
  /** Exactly this port (0: any); when left out, 4655 or the next free one. */
  readonly port?: number;
  /** PostgreSQL, e.g. `postgres://user@host/name`; when left out, a SQLite file in `dataFolder`. */
  readonly databaseUrl?: string;
  /** Where the SQLite file and its backups stand. */
  readonly dataFolder?: string;
  /** Built pages, `apps/web/dist`. */
  readonly webFolder?: string;
  /** Garden documents put into an empty record. */
  readonly demoFolder?: string;
  /** Further names this server answers to, such as the one of a proxy before it. */
  readonly hosts?: readonly string[];
  /** Address people reach this server at, such as `https://garden.example`: printed on labels. */
  readonly publicAddress?: string;
  /** Least level logged: trace, debug, info, warn, error, fatal or silent. */
  readonly logLevel?: string;
}

export const usualPort = 4655;
export const portsTried = 20;

/**
 * Options from the environment: HOST, PORT, DATABASE_URL, SORREL_DATA, SORREL_HOSTS, SORREL_ADDRESS, SORREL_LOG.
 *
 * @throws RangeError with a sentence for the person, when PORT or SORREL_ADDRESS is none
 */
export function optionsFrom(env: Readonly<Record<string, string | undefined>>, cwd: string): ServerOptions {
  const { HOST, PORT, DATABASE_URL, SORREL_DATA, SORREL_HOSTS, SORREL_ADDRESS, SORREL_LOG } = env;
  return {
    ...(HOST ? { host: HOST } : {}),
    ...(PORT ? { port: portOf(PORT) } : {}),
    ...(DATABASE_URL ? { databaseUrl: DATABASE_URL } : {}),
    dataFolder: SORREL_DATA ? resolve(cwd, SORREL_DATA) : join(cwd, 'sorrel-data'),
    ...(SORREL_HOSTS ? { hosts: SORREL_HOSTS.split(',').map((name) => name.trim()) } : {}),
    ...(SORREL_ADDRESS ? { publicAddress: addressOf(SORREL_ADDRESS) } : {}),
    ...(SORREL_LOG ? { logLevel: SORREL_LOG } : {}),
  };
}

function portOf(text: string): number {
  const port = Number(text);
  if (!/^\d+$/.test(text) || port > 65_535) throw new RangeError(words.badPort(text));
  return port;
}

function addressOf(text: string): string {
  const url = URL.canParse(text) ? new URL(text) : undefined;
  if (url === undefined || !/^https?:$/.test(url.protocol)) throw new RangeError(words.badAddress(text));
  return url.origin;
}
