// Runs one PostgreSQL server and never outlives the process that asked for it: when its input closes, whatever the
// reason, it stops the server and removes the folder. Plain JavaScript, so that it starts without a loader.
import { spawn } from 'node:child_process';
import { readdirSync, readFileSync, rmSync } from 'node:fs';

const { program, arguments: given, folder, uid, gid, env } = JSON.parse(process.argv[2]);
const identity = uid === undefined ? {} : { uid, gid };
let server;
let log = '';
let ending = false;
let tries = 0;
const readyLine = 'ready to accept connections';

const tell = (line) => {
  try {
    process.stdout.write(`${line}\n`);
  } catch {
    // Nobody listens any more; the closing of the input ends this process.
  }
};
process.stdout.on('error', () => undefined);
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => undefined);

function start() {
  server = spawn(program, given, { ...identity, cwd: folder, env, stdio: ['ignore', 'ignore', 'pipe'] });
  const mine = server;
  let said = '';
  let ready = false;
  mine.stderr.setEncoding('utf8');
  mine.stderr.on('data', (text) => {
    log = (log + text).slice(-4000);
    said = (said + text).slice(-4000);
    if (!ready && said.includes(readyLine)) {
      ready = true;
      tell('ready');
    }
  });
  mine.on('error', (error) => tell(`failed ${JSON.stringify(String(error))}`));
  mine.on('exit', () => {
    if (server === mine) server = undefined;
    // After a kill, the last of the old processes may take a moment to be gone.
    if (!ending && /pre-existing shared memory|lock file .* already exists/.test(said) && tries-- > 0) {
      setTimeout(() => ending || start(), 100);
      return;
    }
    tell(`exited ${JSON.stringify(log)}`);
    if (ending) leave();
  });
}

/** The server's own processes, where the system tells (Linux). */
function childrenOf(parent) {
  try {
    return readdirSync('/proc')
      .filter((name) => /^\d+$/.test(name))
      .filter((name) => {
        try {
          return Number(readFileSync(`/proc/${name}/stat`, 'utf8').split(') ')[1].split(' ')[1]) === parent;
        } catch {
          return false;
        }
      })
      .map(Number);
  } catch {
    return [];
  }
}

function killHard() {
  if (server === undefined) return;
  const pids = [server.pid, ...childrenOf(server.pid)];
  for (const pid of pids)
    try {
      process.kill(pid, 'SIGKILL');
    } catch {
      // Gone already.
    }
}

function leave() {
  rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  process.exit(0);
}

function end() {
  if (ending) return;
  ending = true;
  if (server === undefined) leave();
  server.kill('SIGINT');
  setTimeout(killHard, 10_000).unref();
}

let buffered = '';
process.stdin.setEncoding('utf8');
process.stdin.on('data', (text) => {
  buffered += text;
  const lines = buffered.split('\n');
  buffered = lines.pop() ?? '';
  for (const line of lines)
    if (line === 'start') {
      tries = 100;
      start();
    } else if (line === 'kill') killHard();
    else if (line === 'end') end();
});
process.stdin.on('end', end);
process.stdin.on('error', end);
