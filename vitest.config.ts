import { defineConfig } from 'vitest/config';

const long = process.env.LONG === '1';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    exclude: long ? [] : ['test/**/*.long.test.ts'],
    // Much of the time is spent waiting for the browser: two files at a time, even on two cores.
    maxWorkers: 2,
    // Nothing in the core outlives a call, so files may share what they import.
    isolate: false,
    // What is no test itself is loaded as the program loads it: the runner would make every imported name a look-up, which costs
    // a tenth of the time.
    server: { deps: { external: [/\/(src|test)\/(?!.*\.test\.ts$).*\.ts$/] } },
    // Layouts and drawings are many small things that soon fall away: room for them saves a twentieth of the time.
    execArgv: ['--import', 'tsx', '--max-semi-space-size=64'],
    testTimeout: long ? 3_600_000 : 60_000,
    hookTimeout: 120_000,
  },
});
