/**
 * Levels moved as little as may be so that no two are nearer than `apart`, in the order given. Each is first pushed up
 * over the one below it, then the whole run is moved back by half of what the pushing cost.
 *
 * @example keepApart([0, 1, 10], 5) //=> [-2, 3, 8]
 * @example keepApart([10, 0], 5) //=> [10, 0]
 */
export function keepApart(levels: readonly number[], apart: number): readonly number[] {
  const order = levels.map((level, i) => ({ level, i })).sort((a, b) => a.level - b.level || a.i - b.i);
  const pushed: number[] = [];
  for (const { level } of order) pushed.push(Math.max(level, (pushed.at(-1) ?? -Infinity) + apart));
  const cost = Math.max(0, ...order.map(({ level }, k) => pushed[k]! - level)) / 2;
  const moved = cost === 0 ? pushed : pushed.map((level) => level - cost);
  const result = [...levels];
  order.forEach(({ i }, k) => {
    result[i] = moved[k]!;
  });
  return result;
}
