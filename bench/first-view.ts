import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';

const dist = new URL('../apps/web/dist/', import.meta.url);

/** Script files that a page loads before it can draw: those in the page, and what they import at once. */
function atOnce(names: readonly string[], seen = new Set<string>()): Set<string> {
  for (const name of names) {
    if (seen.has(name)) continue;
    seen.add(name);
    const text = readFileSync(new URL(name, dist), 'utf8');
    const folder = name.slice(0, name.lastIndexOf('/') + 1);
    const imports = [
      ...text.matchAll(/(?:^|[;}\s])(?:import|export)\s*(?:[^'"();]*?from\s*)?["']\.\/([^"']+\.js)["']/g),
    ];
    atOnce(
      imports.map((match) => `${folder}${match[1]}`),
      seen,
    );
  }
  return seen;
}

/** Compressed bytes of the scripts of the first view, and the files. */
export function firstView(): { readonly bytes: number; readonly files: readonly string[] } {
  const page = readFileSync(new URL('index.html', dist), 'utf8');
  const scripts = [...page.matchAll(/<script[^>]+src="\/?([^"]+\.js)"/g)].map((match) => match[1] ?? '');
  const files = [...atOnce(scripts)];
  const bytes = files.reduce((sum, name) => sum + gzipSync(readFileSync(new URL(name, dist)), { level: 9 }).length, 0);
  return { bytes, files };
}
