import { bounds, type Point, rotate } from '../../geometry/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { Ground } from '../frame/Ground.ts';
import type { AxisStart } from '../Layout.ts';
import { AXES, type Axis, type Choice, type MainRuns } from './Choice.ts';
import { findRuns, longestSpan } from './findRuns.ts';
import { spacingAlong } from './mainRuns.ts';
import { distinct } from './sameStart.ts';

/** Not moved, and moved a quarter of the repeat to either side: the mirrored room has the mirrored choice. */
const QUARTERS = [0, 1, -1] as const;

/**
 * Starts for a pattern that lies slantwise in its room: a joint or the middle of a tile is put on the middle
 * of the room's longest runs, and the pattern shifted from there along the room's own directions, which lie
 * `turn` radians back from the frame's.
 */
export function slantedChoices(ground: Ground, pattern: Pattern, turn: number): Choice[] {
  const runs = roomRuns(ground, turn);
  const middle = rotate(middleOf(runs), -turn);
  const along = rotate([spacingAlong(pattern, -turn) / 4, 0], -turn);
  const across = rotate([0, spacingAlong(pattern, Math.PI / 2 - turn) / 4], -turn);
  const choices = anchorsOf(pattern).flatMap(({ what, at }) =>
    QUARTERS.flatMap((i) =>
      QUARTERS.map((j): Choice => {
        const origin: Point = [
          Math.round(middle[0] - at[0] + i * along[0] + j * across[0]) + 0,
          Math.round(middle[1] - at[1] + i * along[1] + j * across[1]) + 0,
        ];
        const shift = Math.round(Math.abs(i) * Math.hypot(...along) + Math.abs(j) * Math.hypot(...across));
        const start = (axis: Axis, quarters: number, position: number): AxisStart => ({
          wish: 'best',
          what: quarters === 0 ? what : `${what}Quarter`,
          position,
          run: named(ground, runs, axis),
        });
        return { origin, shift, along: start('along', i, origin[0]), across: start('across', j, origin[1]) };
      }),
    ),
  );
  return distinct(choices, pattern);
}

/** Places of the pattern that are put on the middle: of its first tile, and of the joint beside it. */
function anchorsOf({ tiles, joint, straightX }: Pattern): { what: 'joint' | 'tile'; at: Point }[] {
  const { minX, minY, maxX, maxY } = bounds(tiles[0]!.ring);
  const centre: Point = [(minX + maxX) / 2, (minY + maxY) / 2];
  // Where courses are shifted no joints cross; the middle of the joint at the tile's end is as even.
  const beside: Point = straightX ? [minX - joint / 2, minY - joint / 2] : [minX - joint / 2, centre[1]];
  return [
    { what: 'joint', at: beside },
    { what: 'tile', at: centre },
  ];
}

function named({ faces }: Ground, runs: MainRuns, axis: Axis): NonNullable<AxisStart['run']> {
  const { low, high, lowFace, highFace } = runs[axis];
  return { from: faces[lowFace]!.id, to: faces[highFace]!.id, length: high - low };
}

/** Runs along the room's directions, in the frame turned so that these lie along its axes. */
function roomRuns({ edges, faces }: Ground, turn: number): MainRuns {
  const straightened = edges.map(({ from, to, face }) => ({
    from: rotate(from, turn),
    to: rotate(to, turn),
    face,
  }));
  const [along, across] = AXES.map(
    (_, axis) =>
      findRuns(straightened, faces, axis as 0 | 1, turn)[0] ??
      longestSpan(straightened, faces, axis as 0 | 1),
  );
  return { along: along!, across: across! };
}

function middleOf({ along, across }: MainRuns): Point {
  return [(along.low + along.high) / 2, (across.low + across.high) / 2];
}
