import { isConvex, type Point, pointInShape, type Ring, type Shape, side } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import { type Run, sawnRuns } from './sawnRuns.ts';

/** What comes nearer to a side than this, in ticks, goes through it. */
const TOUCHES = 2;

/**
 * The least width of tile left between an opening in a piece and a side of the tile, in ticks; null where no
 * opening stands in the piece, or all of them go through to the side. A straight cut and a room's own inner
 * corner are no openings: what they leave is a strip.
 *
 * @example webOf({ outer: [[0, 0], [90, 0], [90, 90], [50, 90], [50, 60], [0, 60]], holes: [] }, [[0, 0], [90, 0], [90, 90], [0, 90]]) //=> 40
 * @example webOf({ outer: [[0, 0], [90, 0], [90, 60], [0, 60]], holes: [] }, [[0, 0], [90, 0], [90, 90], [0, 90]]) //=> null
 */
export function webOf(shape: Shape, tile: Ring): Ticks | null {
  if (shape.holes.length === 0 && isConvex(shape.outer)) return null;
  const runs = [...sawnRuns(shape.outer, tile).filter(standsIn), ...shape.holes];
  const webs = runs.flatMap((run) => tile.map((_, at) => webToSide(shape, run, tile, at)));
  const least = Math.min(...webs);
  return Number.isFinite(least) ? Math.round(least) : null;
}

/** A stretch that turns right somewhere has a corner that stands into the piece. */
function standsIn(run: Run): boolean {
  return run.some((point, i) => i > 0 && i + 1 < run.length && side(run[i - 1]!, point, run[i + 1]!) < 0);
}

function webToSide(shape: Shape, run: Run, tile: Ring, at: number): number {
  const p = tile[at]!;
  const q = tile[(at + 1) % tile.length]!;
  const length = Math.hypot(q[0] - p[0], q[1] - p[1]);
  let least = Infinity;
  let nearest = p;
  for (const point of run) {
    const off = side(p, q, point) / length;
    if (off < least) [least, nearest] = [off, point];
  }
  if (least <= TOUCHES) return Infinity;
  // The tile's side lies to the right of the way from p to q turned about: half way there must be tile.
  const [nx, ny] = [(q[1] - p[1]) / length, (p[0] - q[0]) / length];
  const halfway: Point = [nearest[0] + (nx * least) / 2, nearest[1] + (ny * least) / 2];
  return pointInShape(halfway, shape) ? least : Infinity;
}
