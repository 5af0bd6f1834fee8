// Makes a fresh clone ready: installs what the lock file asks for, when it is not there yet.
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { npm, root } from './steps.mjs';

const oldest = [20, 19];

function packagesOf(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8')).packages;
  } catch {
    return undefined;
  }
}

/**
 * Compares what is installed with the lock file by content, not by file times, so that a fresh checkout
 * over a good installation is left alone. Packages for other systems are optional and may be absent.
 */
export function installedAsLocked(folder = root) {
  const wanted = packagesOf(`${folder}/package-lock.json`);
  const present = packagesOf(`${folder}/node_modules/.package-lock.json`);
  if (!wanted || !present) return false;
  return Object.entries(wanted).every(
    ([path, entry]) =>
      path === '' || (present[path] === undefined ? entry.optional : present[path].version === entry.version),
  );
}

/** Installs when needed; ends the process with a plain sentence when it cannot. */
export function setup() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major < oldest[0] || (major === oldest[0] && minor < oldest[1])) {
    console.error(`Sorrel needs Node ${oldest.join('.')} or newer; this is ${process.versions.node}.`);
    process.exit(1);
  }
  if (installedAsLocked()) return;
  console.log('Installing what Sorrel is built with (once)...');
  if (npm('ci', '--prefer-offline', '--no-audit', '--no-fund', '--loglevel=error') !== 0) {
    console.error('The installation failed; npm says why above. The first one needs a connection to the npm registry.');
    process.exit(1);
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) setup();
