// Runs one TypeScript file of the workspace with the arguments after it.
import { spawnSync } from 'node:child_process';

const [file, ...rest] = process.argv.slice(2);
const child = spawnSync(process.execPath, ['--import', 'tsx', file, ...rest], { stdio: 'inherit' });
process.exit(child.status ?? 1);
