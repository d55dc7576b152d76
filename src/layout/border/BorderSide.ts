import { type Point, side } from '../../geometry/index.ts';
import type { EdgeFacts, SurfaceSpec } from '../../job/Job.ts';

/** A straight wall from corner to corner in the pattern's frame, as a border runs along it: across its doorways too. */
export interface BorderSide {
  readonly wall: string;
  readonly from: Point;
  readonly to: Point;
  readonly facts: EdgeFacts;
  /** Names of the doorways in it. */
  readonly doorways: readonly string[];
  /** Whether the room has more than half a turn at the corner where it begins. */
  readonly standsIn: boolean;
}

/** The walls of a surface, its corners given in the pattern's frame. */
export function borderSides(
  { walls, doorways }: Pick<SurfaceSpec, 'walls' | 'doorways'>,
  corners: readonly Point[],
): readonly BorderSide[] {
  const n = corners.length;
  return walls.map(({ id, meets, gap, gapMax, touch, seen }, i) => {
    const [from, to] = [corners[i]!, corners[(i + 1) % n]!];
    return {
      wall: id,
      from,
      to,
      facts: { meets, gap, gapMax, touch, seen },
      doorways: doorways.filter(({ wall }) => wall === id).map(({ name }) => name),
      standsIn: side(corners[(i + n - 1) % n]!, from, to) < 0,
    };
  });
}
