import { fileURLToPath } from 'node:url';
import { optionsFrom } from './options.ts';
import { startServer } from './start-server.ts';
import { words } from './words.ts';

// dist/server.mjs and src/main.ts stand at the same depth.
const beside = (path: string) => fileURLToPath(new URL(`../../../${path}`, import.meta.url));

try {
  const server = await startServer({
    webFolder: beside('apps/web/dist'),
    demoFolder: beside('demo'),
    ...optionsFrom(process.env, process.cwd()),
  });
  let asked = false;
  const stop = () => {
    // Asked twice, somebody does not want to wait for what is under way.
    if (asked) process.exit(1);
    asked = true;
    server.stop().then(
      () => process.exit(0),
      () => process.exit(1),
    );
  };
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, stop);
  process.stdout.write(`${words.listening(server.address)}\n`);
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
}
