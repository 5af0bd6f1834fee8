// Puts what the README's commands print now under each of its examples.
import { execSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { withOutput } from './readme.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const page = `${root}README.md`;
writeFileSync(
  page,
  withOutput(readFileSync(page, 'utf8'), (command) => execSync(command, { cwd: root, encoding: 'utf8' })),
);
