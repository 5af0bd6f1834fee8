import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['apps/web/e2e/**/*.e2e.ts'],
    root: new URL('../../..', import.meta.url).pathname,
    fileParallelism: false,
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
