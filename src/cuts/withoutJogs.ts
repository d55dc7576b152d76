import { type Point, side } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { Corner } from './straighten.ts';

/** The largest jog that is sawn straight, along either side of the tile, and what a piece may lose by it: what its gaps have to spare. */
export interface JogLimits {
  readonly most: Ticks;
  readonly loose: Ticks;
}

/**
 * Draws a sawn edge on past a jog that no saw can follow, where a wall steps forth by a mark or less, so that what the jog left standing
 * is sawn off: the piece only gets smaller, nowhere by more than its gaps have to spare. Pieces with arcs and curves stay as they are.
 *
 * @param corners walked with the piece on the left.
 * @param onSide whether a line lies on a side of the tile.
 * @example withoutJogs([{ at: [0, 0] }, { at: [90, 0] }, { at: [90, 50] }, { at: [88, 50] }, { at: [88, 80] }, { at: [0, 80] }], { most: 2, loose: 2 }, (a, b) => a[0] + b[0] === 0 || a[1] + b[1] === 0 || a[1] + b[1] === 160).length //=> 4
 */
export function withoutJogs(
  corners: readonly Corner[],
  limits: JogLimits,
  onSide: (from: Point, to: Point) => boolean,
): readonly Corner[] {
  if (limits.loose <= 0 || corners.some(({ arc, via }) => arc !== undefined || via)) return corners;
  const ring = corners.map(({ at }) => at);
  const forth = dropped(ring, limits, onSide, 1);
  const back = dropped([...forth].reverse(), limits, onSide, -1).reverse();
  return back.length === ring.length ? corners : back.map((at) => ({ at }));
}

/** The ring without its jogs that step back after what they leave standing; `way` is 1 where the piece lies on the left. */
function dropped(
  ring: readonly Point[],
  limits: JogLimits,
  onSide: (from: Point, to: Point) => boolean,
  way: 1 | -1,
): Point[] {
  for (let i = 0; i < ring.length && ring.length > 4; i++) {
    const at = (k: number) => ring[(i + k + ring.length) % ring.length]!;
    const [tip, inner, far] = [at(0), at(1), at(2)];
    const isSmall = [0, 1].every((axis) => Math.abs(tip[axis]! - inner[axis]!) <= limits.most);
    if (!isSmall || onSide(tip, inner) || onSide(inner, far) || way * side(tip, inner, far) >= 0) continue;
    const runs = onSide(at(-1), tip) ? [1] : [1, 2];
    const cut = runs.flatMap((count) => {
      const [from, to] = [at(-count), at(1 - count)];
      const meet = meeting(from, to, inner, far);
      // Drawn on along a side of the tile at a low angle it would take a strip off what lies at a joint.
      if (meet && onSide(from, to) && lengthOf(meet, to) > 2 * limits.most) return [];
      const lost = [0, -1].slice(0, count).map(at);
      const off = (point: Point) => Math.abs(side(inner, far, point)) / lengthOf(inner, far);
      return meet && lost.every((point) => off(point) <= limits.loose) ? [{ meet, count }] : [];
    })[0];
    if (!cut) continue;
    const gone = new Set([inner, ...[0, -1].slice(0, cut.count).map(at)]);
    const kept = ring.flatMap((point) => (point === inner ? [cut.meet] : gone.has(point) ? [] : [point]));
    return dropped(kept, limits, onSide, way);
  }
  return [...ring];
}

const lengthOf = (a: Point, b: Point) => Math.hypot(b[0] - a[0], b[1] - a[1]);

/** Where the line from `far` to `inner` drawn on meets the edge from `p` to `q`; undefined where it does not. */
function meeting(p: Point, q: Point, inner: Point, far: Point): Point | undefined {
  const [offP, offQ] = [side(inner, far, p), side(inner, far, q)];
  const share = offP / (offP - offQ);
  if (!(share >= 0 && share < 1)) return undefined;
  const meet: Point = [Math.round(p[0] + share * (q[0] - p[0])), Math.round(p[1] + share * (q[1] - p[1]))];
  const isAhead = (meet[0] - inner[0]) * (inner[0] - far[0]) + (meet[1] - inner[1]) * (inner[1] - far[1]) > 0;
  return isAhead ? meet : undefined;
}
