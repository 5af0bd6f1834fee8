import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['{packages,apps,checks,bench,scripts}/**/*.test.ts'],
    testTimeout: 60_000,
  },
});
