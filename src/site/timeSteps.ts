/** One thing to time. */
export interface Step {
  readonly name: string;
  /** Done this often before the clock starts, so that compiled code is timed. */
  readonly warmUps: number;
  readonly times: number;
  readonly run: () => unknown;
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}

async function timeOnce(run: Step['run']): Promise<number> {
  const started = performance.now();
  await run();
  return performance.now() - started;
}

/** Runs the steps one after another; a line each with its median and its longest time. */
export async function* timeSteps(steps: readonly Step[]): AsyncGenerator<string> {
  for (const { name, warmUps, times, run } of steps) {
    for (let n = 0; n < warmUps; n++) await run();
    const spent: number[] = [];
    for (let n = 0; n < times; n++) spent.push(await timeOnce(run));
    const longest = Math.max(...spent);
    yield `${name.padEnd(48)} ${median(spent).toFixed(1).padStart(9)} ms   (longest of ${times}: ${longest.toFixed(1)} ms)`;
  }
}
