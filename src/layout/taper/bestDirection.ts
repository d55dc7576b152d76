/** A wall as it weighs on the choice of a direction: its angle off an axis in radians, and its length times how much it is looked at. */
export interface Weighed {
  readonly off: number;
  readonly weight: number;
}

/** The largest taper, weighted, of a pattern turned by some radians. */
export function worstTaper(walls: readonly Weighed[], turn: number): number {
  return Math.max(0, ...walls.map(({ off, weight }) => weight * Math.abs(Math.sin(turn - off))));
}

/** All tapers together, weighted. */
export function summedTaper(walls: readonly Weighed[], turn: number): number {
  return walls.reduce((sum, { off, weight }) => sum + weight * Math.abs(Math.sin(turn - off)), 0);
}

/**
 * The turn in radians that makes the largest weighted taper least.
 *
 * Over the few degrees between walls each taper falls to its own wall and rises again, so the least of their largest lies
 * where two walls taper alike: all pairs are tried, and the walls themselves. One that wins by nothing does not replace an earlier.
 *
 * @example
 * Math.round(bestDirection([{ off: 0, weight: 100 }, { off: 0.03, weight: 50 }]) * 1e5) //=> 1000
 * bestDirection([{ off: 0.02, weight: 10 }]) //=> 0.02
 */
export function bestDirection(walls: readonly Weighed[]): number {
  const weighing = walls.filter(({ weight }) => weight > 0);
  const turns = [
    ...weighing.map(({ off }) => off),
    ...weighing.flatMap((one, i) => weighing.slice(i + 1).flatMap((other) => alike(one, other))),
  ];
  const least = Math.min(...turns.map((turn) => worstTaper(weighing, turn)));
  return turns.find((turn) => worstTaper(weighing, turn) <= least * (1 + 1e-9) + 1e-9) ?? 0;
}

/** Turns at which two walls taper alike: w·sin(t − a) = ±v·sin(t − b), which is a tangent. */
function alike({ off: a, weight: w }: Weighed, { off: b, weight: v }: Weighed): number[] {
  return [v, -v]
    .map(
      (signed) => [w * Math.sin(a) - signed * Math.sin(b), w * Math.cos(a) - signed * Math.cos(b)] as const,
    )
    .map(([rise, run]) => Math.atan(rise / run))
    .filter(Number.isFinite);
}
