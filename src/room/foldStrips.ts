import type { Point } from '../geometry/index.ts';
import type { EdgeFacts } from '../job/Job.ts';
import type { Ticks } from '../measure/index.ts';
import type { Falls, Fold } from './Falls.ts';
import type { Obstacle } from './Room.ts';

/** Along a fold tile meets tile at a joint: nothing to read a tape from, and no wall that a start is chosen by. */
const FACTS: EdgeFacts = { meets: 'fold', gap: 0, gapMax: 0, touch: false, seen: 'hidden' };

/** The joints along folds that tile is cut at, as strips that stay without tile; none where folds are only drawn. */
export function foldStrips(falls: Falls | undefined, joint: Ticks): Obstacle[] {
  return falls?.cut && joint > 0 ? falls.folds.map((fold) => strip(fold, joint)) : [];
}

/** From drain to corner, half a joint to either side, and on by a joint into both, so that no speck of tile stays at its ends. */
function strip({ corner, from, to }: Fold, joint: Ticks): Obstacle {
  const name = `fold ${corner}`;
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [x, y] = [((to[0] - from[0]) * joint) / length, ((to[1] - from[1]) * joint) / length];
  const at = ([u, v]: Point, on: 1 | -1, side: 0.5 | -0.5): Point => [
    Math.round(u + on * x - side * y),
    Math.round(v + on * y + side * x),
  ];
  const ring = [at(from, -1, -0.5), at(to, 1, -0.5), at(to, 1, 0.5), at(from, -1, 0.5)];
  const edges = ring.map((point, i) => ({
    ...FACTS,
    id: `${name}:${i + 1}`,
    name,
    from: point,
    to: ring[(i + 1) % ring.length]!,
  }));
  return { name, facts: FACTS, ring, cleared: ring, edges };
}
