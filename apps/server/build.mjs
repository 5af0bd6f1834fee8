// Bundles the server and the rooms below it into dist/server.mjs, and what its threads run into dist/workshop.mjs. Packages from the registry stay where they are
// installed: some are native, some find fonts beside themselves.
import { readFileSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const here = fileURLToPath(new URL('.', import.meta.url));

const packagesStay = {
  name: 'packages-stay',
  setup({ onResolve }) {
    onResolve({ filter: /^[^./]/ }, ({ path, kind }) =>
      kind === 'entry-point' || path.startsWith('@sorrel/') ? undefined : { path, external: true },
    );
  },
};

/** Writes `server.mjs` and the thread of its workshop. Needs the almanac's generated modules. */
export async function buildServer(outdir = `${here}dist`) {
  const { version } = JSON.parse(readFileSync(`${here}package.json`, 'utf8'));
  rmSync(outdir, { recursive: true, force: true });
  await build({
    entryPoints: { server: `${here}src/main.ts`, workshop: `${here}src/workshop/thread.ts` },
    outdir,
    outExtension: { '.js': '.mjs' },
    bundle: true,
    splitting: true,
    format: 'esm',
    platform: 'node',
    target: 'node20.19',
    sourcemap: 'linked',
    legalComments: 'none',
    plugins: [packagesStay],
    define: { 'process.env.SORREL_VERSION': JSON.stringify(version) },
    logLevel: 'warning',
  });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await buildServer();
