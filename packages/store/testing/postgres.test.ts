import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { setTimeout } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import pg from 'pg';
import { afterAll, describe, expect, it } from 'vitest';

const helper = fileURLToPath(new URL('./postgres.ts', import.meta.url));
const program = `
  import { startPostgres } from ${JSON.stringify(helper)};
  const server = await startPostgres({ settings: { fsync: 'off' } });
  console.log(await server.database('garden'));
  setInterval(() => undefined, 1000);
`;

describe('the test server', () => {
  let child: ReturnType<typeof spawn> | undefined;
  afterAll(() => child?.kill('SIGKILL'));

  it('ends with the program that started it, even when that is killed', async () => {
    child = spawn(process.execPath, ['--import', 'tsx', '--input-type=module', '-e', program], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    const url = await new Promise<string>((resolve, reject) => {
      child?.stdout?.once('data', (text: Buffer) => resolve(String(text).trim()));
      child?.once('exit', (code) => reject(new Error(`ended with ${code}`)));
    });
    const client = new pg.Client({ connectionString: url });
    client.on('error', () => undefined);
    await client.connect();
    const { rows } = await client.query('show data_directory');
    const folder = String(rows[0]?.data_directory);
    expect(existsSync(folder)).toBe(true);
    child.kill('SIGKILL');
    for (let waited = 0; existsSync(folder) && waited < 200; waited++) await setTimeout(100);
    expect(existsSync(folder)).toBe(false);
    await expect(new pg.Client({ connectionString: url }).connect()).rejects.toThrow('ECONNREFUSED');
    await client.end().catch(() => undefined);
  });
});
