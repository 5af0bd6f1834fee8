// The workshop's thread as it is written, for tests: a thread does not inherit the loader of its parent.
import { register } from 'tsx/esm/api';

register();
await import('../src/workshop/thread.ts');
