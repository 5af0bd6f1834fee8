import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

/**
 * Loads a file of the bench as the command line is shipped: bundled, without the helper calls that running
 * TypeScript in place adds to every inner function.
 */
export async function bundled<T>(file: string): Promise<T> {
  const root = fileURLToPath(new URL('..', import.meta.url));
  const outfile = `${root}.cache/bench/${file.replace(/\.ts$/, '.mjs')}`;
  await build({
    entryPoints: [`${root}bench/${file}`],
    outfile,
    bundle: true,
    format: 'esm',
    platform: 'node',
    target: 'node20.19',
    minifySyntax: true,
    logLevel: 'warning',
    // Packages written for `require` find it here.
    banner: {
      js: "import{createRequire as benchRequire}from'node:module';const require=benchRequire(import.meta.url);",
    },
  });
  return (await import(pathToFileURL(outfile).href)) as T;
}
