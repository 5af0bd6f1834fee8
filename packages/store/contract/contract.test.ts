import { afterAll, afterEach, beforeAll, describe } from 'vitest';
import { addressContract } from './addresses.ts';
import { appendContract } from './append.ts';
import { assembleContract } from './assemble.ts';
import { daysContract } from './days.ts';
import { createBench } from './stores.ts';
import { togetherContract } from './together.ts';
import { transferContract } from './transfer.ts';
import { undoContract } from './undo.ts';

// What the store promises, the same on both databases; PostgreSQL is a real server.
describe.each(['sqlite', 'postgres'] as const)('the store on %s', (kind) => {
  const bench = createBench(kind);
  beforeAll(bench.setUp, 120_000);
  afterEach(bench.closeAll);
  afterAll(bench.tearDown, 120_000);
  appendContract(bench.open);
  undoContract(bench.open);
  assembleContract(bench.open);
  transferContract(bench.open);
  daysContract(bench);
  togetherContract(bench);
  if (kind === 'postgres') addressContract(bench);
});
