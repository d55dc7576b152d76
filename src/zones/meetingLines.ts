import { type Box, bounds, type Point } from '../geometry/index.ts';
import type { Piece } from '../layout/Layout.ts';
import type { Ticks } from '../measure/index.ts';
import type { Zone } from './Zone.ts';

type Line = NonNullable<Zone['seam']>[number];

/** How much wider than its own width a joint may seem where corners are rounded, in ticks. */
const ROUNDED = 4;

/**
 * The middles of the joints at which pieces of a zone face others that are set later, as lines that run as far as they can. Edges that
 * are not level with each other face none.
 */
export function meetingLines(own: readonly Piece[], later: readonly Piece[], joint: Ticks): Line[] {
  const near = joint + ROUNDED;
  const round = boxOf(later, near);
  const others = later.map((piece) => ({ piece, box: boxOf([piece], near) }));
  const lines = own.flatMap((piece): Line[] => {
    const box = boxOf([piece], 0);
    if (!overlap(box, round)) return [];
    const beside = others.filter((one) => overlap(box, one.box));
    return beside.flatMap((one) => facing(piece, one.piece, near));
  });
  return joined(lines, 2 * near);
}

function boxOf(pieces: readonly Piece[], by: number): Box {
  const { minX, minY, maxX, maxY } = bounds(pieces.map(({ shape }) => shape.outer));
  return { minX: minX - by, minY: minY - by, maxX: maxX + by, maxY: maxY + by };
}

function overlap(a: Box, b: Box): boolean {
  return a.minX <= b.maxX && b.minX <= a.maxX && a.minY <= b.maxY && b.minY <= a.maxY;
}

/** Where the edges of two pieces run beside each other, at most `near` apart: the line midway. */
function facing(one: Piece, other: Piece, near: number): Line[] {
  const edges = edgesOf(one);
  return edgesOf(other).flatMap(([c, d]) =>
    edges.flatMap(([a, b]): Line[] => {
      const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
      const [ux, uy] = [(b[0] - a[0]) / long, (b[1] - a[1]) / long];
      const along = (p: Point) => (p[0] - a[0]) * ux + (p[1] - a[1]) * uy;
      const off = (p: Point) => (p[1] - a[1]) * ux - (p[0] - a[0]) * uy;
      // Edges of neighbours run against each other, the neighbour on the right.
      if (off(c) > ROUNDED || off(c) < -near || Math.abs(off(c) - off(d)) > ROUNDED) return [];
      const [low, high] = [Math.max(0, along(d)), Math.min(long, along(c))];
      if (high - low <= near) return [];
      const half = (off(c) + off(d)) / 4;
      const at = (t: number): Point => [
        Math.round(a[0] + t * ux - half * uy),
        Math.round(a[1] + t * uy + half * ux),
      ];
      return [{ from: at(low), to: at(high) }];
    }),
  );
}

function edgesOf({ shape: { outer } }: Piece): (readonly [Point, Point])[] {
  return outer.map((point, i) => [point, outer[(i + 1) % outer.length]!] as const);
}

/** Lines that go on in one another made into one. */
function joined(lines: readonly Line[], near: number): Line[] {
  const whole: Line[] = [];
  for (const line of [...lines].sort(inOrder)) {
    const before = whole.findIndex((one) => goesOn(one, line, near));
    if (before < 0) whole.push(line);
    else whole[before] = { from: whole[before]!.from, to: line.to };
  }
  return whole;
}

/** From low to high, whichever way round they were found. */
function inOrder(a: Line, b: Line): number {
  return a.from[0] - b.from[0] || a.from[1] - b.from[1];
}

function goesOn({ from, to }: Line, next: Line, near: number): boolean {
  if (Math.hypot(next.from[0] - to[0], next.from[1] - to[1]) > near) return false;
  const [dx, dy] = [next.to[0] - from[0], next.to[1] - from[1]];
  const long = Math.hypot(dx, dy);
  return Math.abs((to[0] - from[0]) * dy - (to[1] - from[1]) * dx) <= ROUNDED * long;
}
