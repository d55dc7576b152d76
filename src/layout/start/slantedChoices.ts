import { type Point, rotate } from '../../geometry/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { Ground } from '../frame/Ground.ts';
import type { AxisStart } from '../Layout.ts';
import { AXES, type Axis, type Choice, type MainRuns } from './Choice.ts';
import { findRuns, longestSpan } from './findRuns.ts';
import { spacingAlong } from './mainRuns.ts';

/** Quarters of a repeat: a joint's crossing on the middle, half a repeat on it the tile's, and between. */
const WHATS = ['joint', 'jointQuarter', 'tile', 'tileQuarter'] as const;

/**
 * Starts for a pattern that lies slantwise in its room: the middle is taken and the pattern shifted along
 * the room's own directions, `turn` radians back from the frame's.
 */
export function slantedChoices(
  ground: Ground,
  pattern: Pattern,
  turn: number,
): { choices: Choice[]; runs: MainRuns } {
  const runs = roomRuns(ground, turn);
  const middle = rotate(middleOf(runs), -turn);
  const half = pattern.joint / 2;
  const directions = { along: -turn, across: Math.PI / 2 - turn };
  const steps = {
    along: spacingAlong(pattern, directions.along) / 4,
    across: spacingAlong(pattern, directions.across) / 4,
  };
  const choices = WHATS.flatMap((one, i) =>
    WHATS.map((other, j): Choice => {
      const by = {
        along: rotate([i * steps.along, 0], -turn),
        across: rotate([0, j * steps.across], -turn),
      };
      const origin: Point = [
        Math.round(middle[0] + half + by.along[0] + by.across[0]) + 0,
        Math.round(middle[1] + half + by.along[1] + by.across[1]) + 0,
      ];
      const shift = Math.round((i % 2) * steps.along + (j % 2) * steps.across);
      const start = (axis: Axis, what: AxisStart['what'], position: number): AxisStart => ({
        wish: 'best',
        what,
        position,
        run: named(ground, runs, axis),
      });
      return {
        origin,
        shift,
        along: start('along', one, origin[0]),
        across: start('across', other, origin[1]),
      };
    }),
  );
  return { choices: distinct(choices, pattern), runs };
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
    (_, axis) => findRuns(straightened, faces, axis as 0 | 1)[0] ?? longestSpan(straightened, axis as 0 | 1),
  );
  return { along: along!, across: across! };
}

function middleOf({ along, across }: MainRuns): Point {
  return [(along.low + along.high) / 2, (across.low + across.high) / 2];
}

/** A shift along one direction can come to the same as one along the other: each start is tried once. */
function distinct(choices: readonly Choice[], pattern: Pattern): Choice[] {
  const kept: Choice[] = [];
  for (const one of [...choices].sort((a, b) => a.shift - b.shift)) {
    if (!kept.some(({ origin }) => sameStart(origin, one.origin, pattern))) kept.push(one);
  }
  return kept;
}

/** Whether two origins put the same tiles on the floor, to within rounding. */
export function sameStart(p: Point, q: Point, { a, b }: Pattern): boolean {
  const [x, y] = [p[0] - q[0], p[1] - q[1]];
  const area = a[0] * b[1] - a[1] * b[0];
  const i = Math.round((x * b[1] - y * b[0]) / area);
  const j = Math.round((y * a[0] - x * a[1]) / area);
  return Math.hypot(x - i * a[0] - j * b[0], y - i * a[1] - j * b[1]) <= 4;
}
