import { readdirSync, readFileSync } from 'node:fs';
import { extname, join, sep } from 'node:path';
import { type Asset, asset } from './asset.ts';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.webp': 'image/webp',
  '.avif': 'image/avif',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
  '.txt': 'text/plain; charset=utf-8',
};

/** Vite puts a hash of the content into the names of what it builds into `assets/`. */
const hashed = /^\/assets\/.*-[\w-]{8,}\.\w+$/;

/**
 * Reads the built pages, once. Only what was read can be served, so no address can lead outside.
 *
 * @param folder `apps/web/dist`
 * @returns assets by path, `/index.html` among them; empty when nothing is built
 */
export function readWebFiles(folder: string): ReadonlyMap<string, Asset> {
  const files = new Map<string, Asset>();
  let entries: string[];
  try {
    entries = readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name));
  } catch {
    return files;
  }
  for (const file of entries) {
    const path = `/${file.slice(folder.length).split(sep).filter(Boolean).join('/')}`;
    const type = types[extname(file)] ?? 'application/octet-stream';
    files.set(path, asset(new Uint8Array(readFileSync(file)), type, hashed.test(path)));
  }
  return files;
}

/** The file for a path; addresses of screens (no dot in the last part) get the one page that draws them all. */
export function webFile(files: ReadonlyMap<string, Asset>, path: string): Asset | undefined {
  const exact = files.get(path);
  if (exact !== undefined) return exact;
  const last = path.slice(path.lastIndexOf('/') + 1);
  return last.includes('.') ? undefined : files.get('/index.html');
}
