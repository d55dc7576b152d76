import { isHard } from '../cuts/isHard.ts';
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

/** A side of a counter-clockwise ring: where it begins, and the unit vector outwards. */
interface Side {
  readonly from: Point;
  readonly out: Point;
}

function sidesOf(ring: Ring): readonly Side[] {
  return ring.map((from, i) => {
    const [x, y] = ring[(i + 1) % ring.length]!;
    const length = Math.hypot(x - from[0], y - from[1]);
    return { from, out: [(y - from[1]) / length, (from[0] - x) / length] };
  });
}

/** A point that lies on sides of the whole tile, moved out to the middle of the joint there. */
function toJoint([x, y]: Point, sides: readonly Side[], half: Ticks): Point {
  let [u, v] = [x, y];
  for (const { from, out } of sides) {
    if (Math.abs((x - from[0]) * out[0] + (y - from[1]) * out[1]) > near) continue;
    [u, v] = [u + out[0] * half, v + out[1] * half];
  }
  return [u, v];
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
  const shape = asGap ? piece.shape : toMiddles(piece, surface.joint / 2);
  const line = look.line ?? (asGap ? 'piece' : 'joint');
  return {
    mark: 'area',
    rings: shapeOn(scale, shape, circlesOf(surface)),
    line,
    ...(look.fill ? { fill: look.fill } : {}),
  };
}

function toMiddles(
  { fullTile, shape }: Pick<PacketPiece, 'fullTile' | 'shape'>,
  half: Ticks,
): PacketPiece['shape'] {
  const sides = sidesOf(fullTile);
  return { outer: shape.outer.map((point) => toJoint(point, sides, half)), holes: shape.holes };
}

/** Fill and outline by what has to be done with a piece: nothing, a cut, a hard cut; dots where it will be out of sight. */
export function lookOf(piece: PacketPiece, hardCuts: ReadonlySet<number>): { fill?: Fill; line?: LineName } {
  if (piece.cut !== null && hardCuts.has(piece.cut)) return { fill: 'hard', line: 'hardPiece' };
  if (!piece.whole) return { fill: 'cut' };
  return piece.seen === 'hidden' ? { fill: 'hidden' } : {};
}

export function hardCutsOf(surface: PacketSurface): ReadonlySet<number> {
  return new Set(surface.cuts.filter(isHard).map(({ number }) => number));
}

/** All pieces of a surface, each by its look. */
export function pieceAreas(surface: PacketSurface, scale: Scale): readonly AreaMark[] {
  const hard = hardCutsOf(surface);
  return surface.pieces.map((piece) => pieceArea(piece, surface, scale, lookOf(piece, hard)));
}
