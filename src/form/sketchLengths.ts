/** Length of a wall of which nothing is known, in ticks: 2 m. */
const usual = 640_000;

interface Leg {
  readonly direction: readonly [number, number];
  readonly length: number | undefined;
}

/** Unit vectors of the walls, by the inner angles at the corners where they begin; the first runs along +x. */
function directions(anglesDeg: readonly number[]): readonly (readonly [number, number])[] {
  let heading = 0;
  return anglesDeg.map((angle, i) => {
    if (i > 0) heading += 180 - angle;
    const radians = (heading * Math.PI) / 180;
    return [Math.cos(radians), Math.sin(radians)] as const;
  });
}

/** The change of the unknown lengths that closes the walk and is the least in all. */
function closing(legs: readonly Leg[], start: number): readonly [number, number] {
  let [xx, xy, yy, x, y] = [1e-6, 0, 1e-6, 0, 0];
  for (const { direction, length } of legs) {
    x -= direction[0] * (length ?? start);
    y -= direction[1] * (length ?? start);
    if (length !== undefined) continue;
    xx += direction[0] ** 2;
    xy += direction[0] * direction[1];
    yy += direction[1] ** 2;
  }
  const determinant = xx * yy - xy * xy;
  return [(x * yy - y * xy) / determinant, (y * xx - x * xy) / determinant];
}

/**
 * Lengths in ticks to draw a room with while some walls are not read yet: those that are known as they are, the others so that the walk
 * round the room closes as well as it can. Angles are those inside at the corners where the walls begin, in degrees.
 *
 * @example
 * sketchLengths([3000, 2000, undefined, undefined], [90, 90, 90, 90]).map(Math.round) //=> [3000, 2000, 3000, 2000]
 */
export function sketchLengths(
  known: readonly (number | undefined)[],
  anglesDeg: readonly number[],
): readonly number[] {
  const read = known.filter((length) => length !== undefined);
  const start = read.length > 0 ? read.reduce((sum, length) => sum + length, 0) / read.length : usual;
  const legs = directions(anglesDeg).map((direction, i): Leg => ({ direction, length: known[i] }));
  const [x, y] = closing(legs, start);
  return legs.map(({ direction, length }) => {
    if (length !== undefined) return length;
    return Math.max(start / 8, start + direction[0] * x + direction[1] * y);
  });
}
