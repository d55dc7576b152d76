import type { Point } from '../../geometry/index.ts';
import { TICKS_PER_INCH } from '../../measure/index.ts';
import type { Choice } from './Choice.ts';
import type { Scored } from './StartQuestion.ts';

/** First and last step, in ticks; each is half the one before. */
const LONGEST = TICKS_PER_INCH / 2;
const SHORTEST = TICKS_PER_INCH / 64;

/** Shares nearer than this are one. */
const SAME_SHARE = 0.0005;

const WAYS: readonly Point[] = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
];

/** How far a climb came, and how many more starts may be laid. */
export interface Climbed {
  readonly best: Scored;
  readonly left: number;
}

/**
 * A start moved, a little at a time, until the smallest piece is as large as can be near by, and from there towards balance: what lies
 * between the places that were tried is found so. `most` starts are laid for it; `beside` says what a move comes to, where it may be made.
 */
export function climbed(
  from: Scored,
  most: number,
  beside: (origin: Point, by: Point) => Choice | undefined,
  lay: (choice: Choice) => Scored,
): Climbed {
  let [best, left] = [from, most];
  const tried = new Set([String(from.choice.origin)]);
  const isNew = ({ origin }: Choice) => !tried.has(String(origin)) && tried.add(String(origin));
  for (let step = LONGEST; step >= SHORTEST; step /= 2) {
    for (let moved = true; moved; ) {
      const around = WAYS.flatMap(([u, v]) => beside(best.choice.origin, [u * step, v * step]) ?? []);
      const next = around.filter(isNew);
      if (next.length > left) return { best, left: 0 };
      left -= next.length;
      const found: Scored = next.map(lay).reduce(better, best);
      moved = found !== best;
      best = found;
    }
  }
  return { best, left };
}

/** The first of two unless the other is better: fewer slivers, a larger smallest piece, or as large a one nearer to balance. */
function better(one: Scored, other: Scored): Scored {
  const [a, b] = [one.candidate, other.candidate];
  if (a.slivers !== b.slivers) return a.slivers! < b.slivers! ? one : other;
  if (Math.abs(a.smallestShare - b.smallestShare) > SAME_SHARE)
    return a.smallestShare > b.smallestShare ? one : other;
  return b.smallestShare >= a.smallestShare && b.shift < a.shift ? other : one;
}
