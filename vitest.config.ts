import { defineConfig } from 'vitest/config';

const long = process.env.LONG === '1';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    exclude: long ? [] : ['test/**/*.long.test.ts'],
    testTimeout: long ? 3_600_000 : 60_000,
    hookTimeout: 120_000,
  },
});
