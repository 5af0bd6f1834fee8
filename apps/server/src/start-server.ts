import { join } from 'node:path';
import { openStore, type Store } from '@sorrel/store';
import type { DestinationStream } from 'pino';
import { createApp } from './app.ts';
import { samplePlanner } from './day/planner.ts';
import { drain } from './http/drain.ts';
import { createHttpServer } from './http/http-server.ts';
import { listen } from './http/listen.ts';
import { createLog, type Logger } from './http/log.ts';
import { hostsFor, isLoopback } from './http/security.ts';
import { readWebFiles } from './http/web-files.ts';
import type { ServerOptions } from './options.ts';
import { type Room, todayOf } from './room.ts';
import { readSecret } from './secret.ts';
import { seed } from './seed.ts';
import { words } from './words.ts';
import { createWorkshop, usualThreads } from './workshop/workshop.ts';

export interface RunningServer {
  /** `http://127.0.0.1:4655` */
  readonly address: string;
  readonly port: number;
  /** Lets the requests under way finish, then closes the record. */
  stop(): Promise<void>;
}

/** What a test may put in the place of the real thing. */
export interface Instead {
  /** Where log lines go; standard error when left out. */
  readonly logTo?: DestinationStream;
  readonly now?: () => number;
}

/** Backups kept of a SQLite record, one a day on which something was written. */
const backupsKept = 14;

/**
 * Starts the server: opens the record (and puts the invented gardens into an empty one), listens, and answers.
 *
 * @throws Error with a sentence for the person when the record cannot be opened or no port is free
 */
export async function startServer(options: ServerOptions, instead: Instead = {}): Promise<RunningServer> {
  const host = options.host ?? '127.0.0.1';
  const now = instead.now ?? Date.now;
  const log = createLog(options.logLevel ?? 'info', instead.logTo);
  const dataFolder = options.dataFolder ?? 'sorrel-data';
  const secret = readSecret(dataFolder);
  const store = await openRecord(options.databaseUrl, dataFolder, log, () => todayOf({ now }));
  const workshop = createWorkshop();
  const planning = store.days.work(samplePlanner({ store, workshop }), {
    // One thread stays for those who ask for something at this moment.
    most: Math.max(1, usualThreads() - 1),
    told: ({ code }, came) => log.info({ code, came }, 'sample'),
    trouble: (error) => log.error({ err: error }, 'samples wait'),
  });
  let stopping = false;
  try {
    if (options.demoFolder !== undefined) await seed(store, options.demoFolder);
    const webFiles = options.webFolder === undefined ? new Map() : readWebFiles(options.webFolder);
    const { publicAddress } = options;
    const room: Room = { store, log, workshop, webFiles, secret, publicAddress, now, stopping: () => stopping };
    // Who is reached at an address is also asked for by its name.
    const named = publicAddress === undefined ? [] : [new URL(publicAddress).hostname];
    const { server, underWay } = createHttpServer(
      createApp(room).fetch,
      room,
      hostsFor(host, [...(options.hosts ?? []), ...named]),
    );
    const port = await listen(server, host, options.port);
    if (!isLoopback(host)) log.warn(words.openToAll(host));
    const address = `http://${host.includes(':') ? `[${host}]` : host}:${port}`;
    log.info({ address, database: store.kind }, 'listening');
    let stopped: Promise<void> | undefined;
    return {
      address,
      port,
      stop() {
        stopping = true;
        stopped ??= drain(server, underWay).then(async () => {
          await planning.stop();
          await workshop.close();
          await store.close();
          log.info('stopped');
          log.flush();
        });
        return stopped;
      },
    };
  } catch (error) {
    await planning.stop();
    await workshop.close();
    await store.close();
    throw error;
  }
}

async function openRecord(url: string | undefined, folder: string, log: Logger, today: () => string): Promise<Store> {
  const opened = await openStore(url ?? join(folder, 'sorrel.sqlite'), {
    ...(url !== undefined
      ? {}
      : {
          backups: {
            folder: join(folder, 'backups'),
            keep: backupsKept,
            today,
            told: (result) =>
              result.ok
                ? log.info({ fresh: result.value.fresh }, 'backup')
                : log.error({ problems: result.problems }, 'backup'),
          },
        }),
  });
  if (opened.ok) return opened.value;
  throw new Error(opened.problems.map(({ message, fix }) => `${message} ${fix}`).join('\n'));
}
