import type { Point, Ring } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { PacketPiece, PacketSurface } from '../packet/Packet.ts';
import type { Fill } from './hatches.ts';
import type { LineName } from './lineStyles.ts';
import type { AreaMark } from './Mark.ts';
import { lengthOn, type Scale } from './Scale.ts';
import { shapeOn, type TrueCircle } from './trueCircle.ts';

/** A joint is drawn as a true gap where it is at least this wide on paper, in mm; else as one line. */
const leastGap = 0.4;
/** A point within this many ticks of a line counts as on it. */
const near = 2;

/** How far a point lies to the right of a → b, which is outside for a counter-clockwise ring. */
function rightOf([ax, ay]: Point, [bx, by]: Point, [x, y]: Point): number {
  const [dx, dy] = [bx - ax, by - ay];
  // The root is as true here as the slower function for lengths, and this is asked for every corner of every piece.
  return (dy * (x - ax) - dx * (y - ay)) / Math.sqrt(dx * dx + dy * dy);
}

/** A point that lies on edges of the whole tile, moved out to the middle of the joint there. */
function toJoint(point: Point, tile: Ring, half: Ticks): Point {
  return tile.reduce<Point>((moved, a, i) => {
    const b = tile[(i + 1) % tile.length]!;
    if (Math.abs(rightOf(a, b, point)) > near) return moved;
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    return [moved[0] + ((b[1] - a[1]) / length) * half, moved[1] - ((b[0] - a[0]) / length) * half];
  }, point);
}

/** All true circles of a surface's obstacles, with their gap. */
export function circlesOf(surface: PacketSurface): readonly TrueCircle[] {
  return surface.obstacles.flatMap(({ circle }) =>
    circle ? [circle.clearRadius, circle.radius].map((radius) => ({ centre: circle.centre, radius })) : [],
  );
}

/** One piece as an area: where joints are too fine to draw as gaps, pieces meet in the middle of the joint. */
export function pieceArea(
  piece: Pick<PacketPiece, 'fullTile' | 'shape'>,
  surface: PacketSurface,
  scale: Scale,
  look: { readonly fill?: Fill; readonly line?: LineName },
): AreaMark {
  const asGap = lengthOn(scale, surface.joint) >= leastGap;
  const grow = (ring: Ring) => ring.map((point) => toJoint(point, piece.fullTile, surface.joint / 2));
  const shape = asGap ? piece.shape : { outer: grow(piece.shape.outer), holes: piece.shape.holes };
  const line = look.line ?? (asGap ? 'piece' : 'joint');
  return {
    mark: 'area',
    rings: shapeOn(scale, shape, circlesOf(surface)),
    line,
    ...(look.fill ? { fill: look.fill } : {}),
  };
}

/** Fill and outline by what has to be done with a piece: nothing, a cut, a hard cut; dots where it will be out of sight. */
export function lookOf(piece: PacketPiece, hardCuts: ReadonlySet<number>): { fill?: Fill; line?: LineName } {
  if (piece.cut !== null && hardCuts.has(piece.cut)) return { fill: 'hard', line: 'hardPiece' };
  if (!piece.whole) return { fill: 'cut' };
  return piece.seen === 'hidden' ? { fill: 'hidden' } : {};
}

export function hardCutsOf(surface: PacketSurface): ReadonlySet<number> {
  return new Set(surface.cuts.filter(({ hard }) => hard).map(({ number }) => number));
}

/** All pieces of a surface, each by its look. */
export function pieceAreas(surface: PacketSurface, scale: Scale): readonly AreaMark[] {
  const hard = hardCutsOf(surface);
  return surface.pieces.map((piece) => pieceArea(piece, surface, scale, lookOf(piece, hard)));
}
