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

/** Of two turns that lay nearly as much sawn edge to the foot the first counts, so that rounding decides nothing: by this share of all of it. */
const NEARLY = 0.01;

/**
 * Quarter turns in degrees after which the sawn sides of a cut, the walls' sides, face the foot most: a side aslant with the part of its length
 * that lies across. What is sawn out of the piece from a side, as round an obstacle, is no wall's side where there is another.
 */
export function wallDownTurn(cut: Cut): CardTurn {
  const facing = { 0: 0, 180: 0, 90: 0, 270: 0 };
  const outer = wallEdges(cut);
  for (const { from, to } of outer.length > 0 ? outer : straightSawn(cut)) {
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
    // The outside lies to the right of an edge: an edge that runs to the right faces down.
    facing[dx > 0 ? 0 : 180] += Math.abs(dx);
    facing[dy > 0 ? 270 : 90] += Math.abs(dy);
  }
  const all = Object.values(facing).reduce((sum, one) => sum + one, 0);
  const order = [0, 180, 90, 270] as const;
  return order.reduce((best, turn) => (facing[turn] > facing[best] + NEARLY * all ? turn : best));
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
