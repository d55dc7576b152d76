import type { Point } from '../../geometry/index.ts';

/** How the pattern's frame lies in the room's: turned by `turn` radians, `about` a point of the line it follows. */
export interface FrameTurn {
  readonly turn: number;
  readonly about: Point;
}
