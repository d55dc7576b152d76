import { lineThroughShape, type Point } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { PacketPiece, PacketSurface } from '../packet/Packet.ts';
import { type SawnDepth, sawnDepth } from './sawnDepth.ts';

/** How deep a piece is in the line of sight as it is sawn, all of it, not only where the line meets it; null where it is a whole tile. */
export interface SeenDepth {
  readonly depth: SawnDepth | null;
}

/** What one sees of a layout standing in a doorway: the tile at the door, and the one at the wall across. */
export interface DoorView {
  readonly name: string;
  readonly near: SeenDepth;
  readonly far: SeenDepth;
}

/** Where along the door line one looks: a joint may lie in the middle of it. */
const shares = [0.5, 0.42, 0.58, 0.35, 0.65];
/** A line of sight that runs this near to a right angle with the tiles, as a sine, meets them square. */
const square = 0.02;

/** A piece of the layout that is laid bears the number of its cut; one of a layout that is only compared has none. */
type SeenPiece = Pick<PacketPiece, 'whole' | 'fullTile' | 'shape'> & Partial<Pick<PacketPiece, 'cut'>>;

/**
 * The view from each doorway whose line of sight runs along the tiles; a slanting one has no depth that says anything.
 *
 * @param step the saw step in ticks.
 */
export function seenFromDoor(
  surface: PacketSurface,
  pieces: readonly SeenPiece[],
  step: Ticks,
): readonly DoorView[] {
  return surface.openings.flatMap(({ name }) => {
    const line = surface.edges.find(({ id }) => id === `${name}:line`);
    if (!line) return [];
    const [dx, dy] = [line.to[0] - line.from[0], line.to[1] - line.from[1]];
    const length = Math.hypot(dx, dy);
    // The walk keeps the room on its left.
    const inward: Point = [-dy / length, dx / length];
    if (Math.min(Math.abs(inward[0]), Math.abs(inward[1])) > square) return [];
    const views = shares.flatMap((share) => {
      const eye: Point = [line.from[0] + dx * share, line.from[1] + dy * share];
      return viewAlong(surface, pieces, eye, inward, step) ?? [];
    });
    return views.slice(0, 1).map((view) => ({ name, ...view }));
  });
}

function viewAlong(
  surface: PacketSurface,
  pieces: readonly SeenPiece[],
  eye: Point,
  inward: Point,
  step: Ticks,
): Omit<DoorView, 'name'> | undefined {
  const [room] = lineThroughShape({ outer: surface.outline, holes: [] }, eye, inward).filter(
    ({ to }) => to > 0,
  );
  if (!room) return undefined;
  const crossed = pieces
    .flatMap((piece) =>
      lineThroughShape(piece.shape, eye, inward).map(({ from, to }) => ({ piece, from, to })),
    )
    .filter(({ from, to }) => from >= room.from - 1 && to <= room.to + 1)
    .sort((a, b) => a.from - b.from);
  const [near, far] = [crossed[0], crossed.at(-1)];
  if (!near || !far || near === far) return undefined;
  const depth = ({ piece: { whole, shape, cut } }: typeof near): SeenDepth => ({
    depth: whole
      ? null
      : sawnDepth(
          shape.outer,
          inward,
          step,
          surface.cuts.find(({ number }) => number === cut),
        ),
  });
  return { near: depth(near), far: depth(far) };
}
