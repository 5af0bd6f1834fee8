// Finds a browser for the tests: one already on the machine, else the one Playwright installs, else Debian's.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];

function onTheMachine() {
  for (const folder of (process.env.PATH ?? '').split(delimiter))
    for (const name of names) {
      const file = join(folder, name);
      if (existsSync(file)) return file;
    }
  return undefined;
}

const run = (command, ...args) => spawnSync(command, args, { stdio: 'inherit' }).status === 0;

/** Path of a Chromium, installed when there is none; undefined, with the reason said, when none can be had. */
export async function browser() {
  if (process.env.CHROMIUM) return process.env.CHROMIUM;
  const found = onTheMachine();
  if (found !== undefined) return found;
  const { chromium } = await import('playwright-core');
  const own = chromium.executablePath();
  if (own !== '' && existsSync(own)) return own;
  console.log('\n== No browser on this machine: fetching one for the tests');
  run(process.execPath, 'node_modules/playwright-core/cli.js', 'install', 'chromium');
  if (own !== '' && existsSync(own)) return own;
  if (process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) {
    run('apt-get', 'update', '-qq');
    run('apt-get', 'install', '-y', '-qq', '--no-install-recommends', 'chromium', 'fonts-liberation');
    return onTheMachine();
  }
  console.log('No browser could be had. Install Chromium, or name one in the variable CHROMIUM.');
  return undefined;
}
