import type { Cut } from '../cuts/Cut.ts';
import { type Point, type Ring, side } from '../geometry/index.ts';
import { type Outlined, tileOutline } from '../pattern/index.ts';
import { circleOf } from './trueCircle.ts';

/** A whole tile lying flat: length along x, width up; its shape where it is no rectangle. */
export type TileSides = Outlined;

export function tileRing(tile: TileSides): Ring {
  return tileOutline(tile);
}

/** How a cut is turned on its card, in degrees counter-clockwise. */
export type CardTurn = 0 | 90 | 180 | 270;

/**
 * Quarter turns in degrees after which the longest sawn side of a cut, the wall's side, lies at the foot. What is sawn out of the piece from a
 * side, as round an obstacle, is no wall's side where there is another.
 */
export function wallDownTurn(cut: Cut): CardTurn {
  const facing = { 0: 0, 90: 0, 180: 0, 270: 0 };
  const outer = wallEdges(cut);
  for (const { from, to } of outer.length > 0 ? outer : straightSawn(cut)) {
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
    // The outside lies to the right of an edge: an edge that runs to the right faces down.
    const turn = Math.abs(dx) >= Math.abs(dy) ? (dx > 0 ? 0 : 180) : dy > 0 ? 270 : 90;
    facing[turn] += Math.hypot(dx, dy);
  }
  const order = [0, 90, 180, 270] as const;
  return order.reduce((best, turn) => (facing[turn] > facing[best] ? turn : best));
}

/** A piece whose corners lie no farther outside an edge than this, in ticks, lies behind it. */
const BEHIND = 64;

/** The straight sawn edges with all of the piece on their left: those that a wall cuts, and no notch or step. */
export function wallEdges(cut: Cut): Cut['edges'] {
  return straightSawn(cut).filter(({ from, to }) => {
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    return cut.shape.outer.every((point) => side(from, to, point) >= -BEHIND * length);
  });
}

/** Of an edge that leans upward more than this, the sine of the angle, nobody says that it lies at the foot. */
const UPWARD = 0.3;

/** Whether each side that a wall cuts faces the foot or sideways once a cut is turned: not so where walls meet it from both sides of a corner. */
export function wallsLieDown(cut: Cut, turn: CardTurn): boolean {
  const [cos, sin] = [[1, 0, -1, 0][turn / 90]!, [0, 1, 0, -1][turn / 90]!];
  return wallEdges(cut).every(({ from, to }) => {
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
    return dx * cos - dy * sin >= -UPWARD * Math.hypot(dx, dy);
  });
}

const straightSawn = (cut: Cut): Cut['edges'] =>
  cut.edges.filter(({ from, to, factory }) => !factory && !circleOf(from, to, cut.circles));

/** Corners where the saw would run past: those that point into the piece, except along a true circle or a curved or bowed wall. */
export function innerCorners(cut: Cut): readonly Point[] {
  const ends = new Set(cut.edges.flatMap(({ from, to }) => [`${from}`, `${to}`]));
  return [cut.shape.outer, ...cut.shape.holes].flatMap((ring, hole) =>
    ring.filter((b, i) => {
      if (hole === 0 && !ends.has(`${b}`)) return false;
      const [a, c] = [ring[(i + ring.length - 1) % ring.length]!, ring[(i + 1) % ring.length]!];
      const onArc = circleOf(a, b, cut.circles) ?? circleOf(b, c, cut.circles);
      return side(a, b, c) < 0 && !onArc;
    }),
  );
}
