import { execFileSync, spawn } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { examplesOf } from './readme.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const examples = examplesOf(readFileSync(join(root, 'README.md'), 'utf8'));

/** Commands a newcomer runs that this test does not: one would run this test again, the others take minutes. */
const notHere = new Set(['npm test', 'npm run bench']);

/** The invented soil day holds rows that are wrong on purpose, so the command says 1: some left out, the rest served. */
const statusOf = (command: string) => (/ table soil-day\.csv /.test(command) ? 1 : 0);

let house = '';
let clone = '';

/** A fresh clone, brought to the state of the working tree. */
beforeAll(() => {
  house = mkdtempSync(join(tmpdir(), 'sorrel-readme-'));
  clone = join(house, 'sorrel');
  const git = (...args: string[]) =>
    execFileSync('git', args, { cwd: root, encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });
  git('clone', '--quiet', '--no-hardlinks', root, clone);
  const files = (...args: string[]) =>
    git('ls-files', '-z', ...args)
      .split('\0')
      .filter(Boolean);
  for (const file of new Set(files('--modified', '--deleted', '--others', '--exclude-standard')))
    if (existsSync(join(root, file))) {
      mkdirSync(dirname(join(clone, file)), { recursive: true });
      copyFileSync(join(root, file), join(clone, file));
    } else rmSync(join(clone, file), { force: true });
  // Installs as `npm start` would, but takes what is compiled on installation from here: that alone can take minutes.
  const { npm_config_local_prefix: _, ...env } = process.env;
  execFileSync(process.execPath, ['scripts/setup.mjs'], {
    cwd: clone,
    env: { ...env, npm_config_ignore_scripts: 'true' },
  });
  const compiled = readdirSync(join(root, 'node_modules'), { recursive: true, encoding: 'utf8' })
    .filter((file) => /build[/\\]Release[/\\][^/\\]+\.node$/.test(file))
    .map((file) => join('node_modules', file));
  for (const file of compiled) {
    mkdirSync(dirname(join(clone, file)), { recursive: true });
    copyFileSync(join(root, file), join(clone, file));
  }
}, 300_000);

afterAll(() => rmSync(house, { recursive: true, force: true }), 120_000);

interface Ran {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs a command in the clone. One that says where it listens has started well: it is asked to stop, and ends with 0. */
function run(command: string): Promise<Ran> {
  const { npm_config_local_prefix: _, INIT_CWD: __, ...env } = process.env;
  // A group of its own, so that the signal reaches what npm started.
  const child = spawn(command, { cwd: clone, shell: true, detached: true, env: { ...env, NO_COLOR: '1', PORT: '0' } });
  let [stdout, stderr, asked] = ['', '', false];
  child.stdout.on('data', (piece) => {
    stdout += piece;
    if (asked || child.pid === undefined || !/ is at https?:\/\//.test(stdout)) return;
    asked = true;
    process.kill(-child.pid, 'SIGINT');
  });
  child.stderr.on('data', (piece) => {
    stderr += piece;
  });
  return new Promise((done) => {
    child.on('close', (status) => done({ status: asked ? 0 : status, stdout, stderr }));
  });
}

describe('the README', () => {
  it('names the two commands, and shows output under an example', () => {
    const commands = examples.flatMap((example) => example.commands);
    expect(commands).toContain('npm start');
    expect(commands).toContain('npm test');
    expect(examples.some((example) => example.output)).toBe(true);
  });

  it('gives commands that work in a fresh clone, in its order, and print what it shows', async () => {
    for (const { commands, output } of examples) {
      let printed = '';
      for (const command of commands.filter((each) => !notHere.has(each) && !/^(git clone|cd) /.test(each))) {
        const { stdout, stderr, status } = await run(command);
        expect([command, status], stderr + stdout).toEqual([command, statusOf(command)]);
        printed += stdout;
      }
      if (output !== undefined) expect(printed.trim()).toBe(output.trim());
    }
  }, 300_000);
});

describe('the papers', () => {
  it('link only to files that are there', () => {
    const pages = execFileSync('git', ['ls-files', '-co', '--exclude-standard', '*.md'], {
      cwd: root,
      encoding: 'utf8',
    });
    const broken = pages
      .split('\n')
      .filter((page) => page !== '' && existsSync(join(root, page)))
      .flatMap((page) =>
        [...readFileSync(join(root, page), 'utf8').matchAll(/\]\((?!https?:|#)([^)#\s]+)[^)]*\)/g)]
          .map((match) => match[1] ?? '')
          .filter((link) => !existsSync(join(root, dirname(page), link)))
          .map((link) => `${page}: ${link}`),
      );
    expect(broken).toEqual([]);
  });
});

describe('examplesOf', () => {
  it('pairs commands with the output that follows at once', () => {
    const page = '```sh\na \\\n  b # why\n# no\nc\n```\n\n```text\nout\n```\n\n```sh\nd\n```\nwords\n```text\nx\n```\n';
    expect(examplesOf(page)).toEqual([{ commands: ['a b', 'c'], output: 'out\n' }, { commands: ['d'] }]);
  });
});
