// Runs the journeys and renews the pictures of every screen in docs/screens.
import { browser } from './browser.mjs';
import { build } from './build.mjs';
import { setup } from './setup.mjs';
import { node } from './steps.mjs';

setup();
await build();
process.env.SORREL_SCREENS = 'renew';
const chromium = await browser();
if (chromium !== undefined) process.env.CHROMIUM = chromium;
process.exitCode = node('node_modules/vitest/vitest.mjs', 'run', '--config', 'apps/web/e2e/vitest.config.ts');
