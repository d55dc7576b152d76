import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

const long = process.env.LONG === '1';

/** Files that reckon longest, the longest first: begun among the last, one of them would run on while the other worker stands idle. */
const longest = [
  'layout/randomRooms',
  'tiles/fewestTiles',
  'cases/cases',
  'layout/curvedRooms',
  'layout/patternedRooms',
  'layout/curvedObstacles',
];

class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const at = ({ moduleId }: TestSpecification) =>
      longest.findIndex((name) => moduleId.endsWith(`/test/${name}.test.ts`));
    const isLong = (file: TestSpecification) => at(file) >= 0;
    const first = sorted.filter(isLong).sort((one, other) => at(one) - at(other));
    return [...first, ...sorted.filter((file) => !isLong(file))];
  }
}

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    exclude: long ? [] : ['test/**/*.long.test.ts'],
    // Much of the time is spent waiting for the browser: two files at a time, even on two cores.
    maxWorkers: 2,
    sequence: { sequencer: LongestFirst },
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
