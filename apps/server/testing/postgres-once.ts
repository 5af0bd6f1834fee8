import { startPostgres, type TestServer } from '@sorrel/store/testing';

let server: Promise<TestServer> | undefined;
let count = 0;

/** Address of a new empty database; one PostgreSQL server for all tests of a file. */
export async function emptyDatabase(): Promise<string> {
  server ??= startPostgres();
  count += 1;
  return (await server).database(`garden_${count}`);
}

export const postgres = (): Promise<TestServer> => {
  server ??= startPostgres();
  return server;
};

export async function stopPostgres(): Promise<void> {
  await (await server)?.stop();
  server = undefined;
}
