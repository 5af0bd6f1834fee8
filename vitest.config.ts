import { defineConfig } from 'vitest/config';

/** Rooms that keep nothing outside their functions: their test files may share a process, which spares starting one for each. */
const pure = ['packages/{almanac,engine,intake}/**/*.test.ts'];
const common = {
  setupFiles: ['./vitest.setup.ts'],
  testTimeout: 120_000,
  hookTimeout: 120_000,
};

export default defineConfig({
  test: {
    projects: [
      { test: { ...common, name: 'pure', include: pure, isolate: false } },
      {
        test: {
          ...common,
          name: 'rest',
          include: ['{packages,apps,checks,bench,scripts}/**/*.test.ts'],
          exclude: [...pure, '**/node_modules/**'],
        },
      },
    ],
  },
});
