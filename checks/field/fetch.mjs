// Fetches the open field data `varechem` (R package vegan, GPL-2) from the Debian package r-cran-vegan into .cache/, where
// checks/varechem.test.ts reads it. It is never copied into the repository. Needs a Debian system: npm run field-data
import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const cache = fileURLToPath(new URL('../../.cache/', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'sorrel-field-'));
const run = (command, ...args) => {
  const { status, stderr, error } = spawnSync(command, args, { cwd: folder, encoding: 'utf8' });
  if (status === 0) return;
  console.error(`${command} ${args.join(' ')} failed: ${error?.message ?? stderr}`);
  process.exit(1);
};
try {
  run('apt-get', 'download', 'r-cran-vegan');
  const file = readdirSync(folder).find((name) => name.endsWith('.deb'));
  run('dpkg-deb', '-x', file, 'unpacked');
  mkdirSync(cache, { recursive: true });
  copyFileSync(join(folder, 'unpacked/usr/lib/R/site-library/vegan/data/varechem.rda'), join(cache, 'varechem.rda'));
  console.log(`${cache}varechem.rda: varechem of the R package vegan (Oksanen and others), GPL-2, from ${file}`);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
