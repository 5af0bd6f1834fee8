// Bundles the command line into dist/, one file a command, so that each starts with no more than it needs.
import { chmodSync, copyFileSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const here = fileURLToPath(new URL('.', import.meta.url));

// The package's browser build is the same code as modules, so that what is not used is left out.
const yaml = `${dirname(createRequire(import.meta.url).resolve('yaml/package.json'))}/browser/index.js`;

// The solver of `sorrel arrange`, which its loader wants beside the pieces.
const solver = createRequire(import.meta.url).resolve('highs/runtime');

/** Writes `sorrel.mjs` and the pieces it loads. Needs the almanac's generated modules. */
export async function buildCli(outdir = `${here}dist`) {
  const { version } = JSON.parse(readFileSync(`${here}package.json`, 'utf8'));
  rmSync(outdir, { recursive: true, force: true });
  await build({
    entryPoints: {
      sorrel: `${here}src/main.ts`,
      'table-worker': `${here}src/table/worker.ts`,
      'intake-worker': `${here}src/intake/worker.ts`,
    },
    outdir,
    outExtension: { '.js': '.mjs' },
    bundle: true,
    splitting: true,
    format: 'esm',
    platform: 'node',
    target: 'node20.19',
    minifySyntax: true,
    minifyWhitespace: true,
    legalComments: 'none',
    define: { 'process.env.SORREL_VERSION': JSON.stringify(version) },
    alias: { yaml },
    // Only commands that open the record load these; one of them is native.
    external: ['better-sqlite3', 'pg', 'pg-boss', 'kysely'],
    // Packages written for `require` find it here.
    banner: {
      js: "import{createRequire as sorrelRequire}from'node:module';const require=sorrelRequire(import.meta.url);",
    },
    logLevel: 'warning',
  });
  copyFileSync(solver, `${outdir}/highs.wasm`);
  chmodSync(`${outdir}/sorrel.mjs`, 0o755);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await buildCli();
