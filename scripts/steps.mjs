// What the start, test and build commands share. Uses nothing but Node, because it runs before anything is installed.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('..', import.meta.url));

/** Runs Node on a file of the workspace, shows what it prints, and returns its exit code. */
export function node(file, ...args) {
  const child = spawnSync(process.execPath, [file, ...args], { cwd: root, stdio: 'inherit' });
  if (child.error) throw child.error;
  return child.status ?? 1;
}

/** The same, but a failure ends the command with the child's exit code. */
export function mustNode(file, ...args) {
  const code = node(file, ...args);
  if (code !== 0) process.exit(code);
}

/** Runs npm as this process was started by it, or from the path. */
export function npm(...args) {
  const own = process.env.npm_execpath;
  const child = own?.endsWith('.js')
    ? spawnSync(process.execPath, [own, ...args], { cwd: root, stdio: 'inherit' })
    : spawnSync('npm', args, { cwd: root, stdio: 'inherit', shell: process.platform === 'win32' });
  if (child.error) throw child.error;
  return child.status ?? 1;
}
