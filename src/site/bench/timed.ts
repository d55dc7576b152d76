/** Times some work in ms: first `warmUps` runs that do not count, so that compiled code is timed, then `times` that do. */
export async function timed(
  run: () => unknown,
  { warmUps, times }: { readonly warmUps: number; readonly times: number },
): Promise<readonly number[]> {
  for (let n = 0; n < warmUps; n++) await run();
  const spent: number[] = [];
  for (let n = 0; n < times; n++) {
    const started = performance.now();
    await run();
    spent.push(performance.now() - started);
  }
  return spent;
}
