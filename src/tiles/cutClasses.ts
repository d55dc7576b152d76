import type { Cut, Cuts } from '../cuts/Cut.ts';
import { ownPiece } from '../cuts/ownPiece.ts';
import { type OwnPiece, type Turn, turnPiece } from '../cuts/TileBox.ts';
import { convexHull, type Point, ringArea } from '../geometry/index.ts';
import type { TileSpec } from '../job/Job.ts';
import type { Layout } from '../layout/Layout.ts';
import type { CutClass, Slides } from './CutClass.ts';
import { tileTurns } from './TileTurn.ts';

/** The cuts of one kind of tile over all surfaces, parted by what their pieces exactly are in the axes of the cut. */
export function cutClasses(tile: TileSpec, layouts: readonly Layout[], cutsOf: readonly Cuts[]): CutClass[] {
  const alike = layouts.flatMap((layout, i) => {
    const pieceOf = new Map(layout.pieces.map((piece) => [piece.id, piece]));
    const upright = (id: string, turn: Turn) =>
      turnPiece(ownPiece(pieceOf.get(id)!), ((360 - turn) % 360) as Turn);
    const named = (id: string) => (layouts.length > 1 ? `${layout.surface}:${id}` : id);
    return cutsOf[i]!.cuts.filter((cut) => cut.tile === tile.key).flatMap((cut) => {
      const parts = new Map<string, { own: OwnPiece; pieces: string[] }>();
      for (const [k, id] of cut.pieces.entries()) {
        const own = upright(id, cut.turns?.[k] ?? 0);
        const key = JSON.stringify(own.shape.outer);
        const part = parts.get(key) ?? { own, pieces: [] };
        part.pieces.push(named(id));
        parts.set(key, part);
      }
      return [...parts.values()].map((part) => ({ ...part, cut }));
    });
  });
  return alike.map(({ cut, own, pieces }, id): CutClass => {
    const ring = convexHull(own.shape.outer);
    const turns = tileTurns(tile.turns, own.box);
    return {
      id,
      cut,
      pieces,
      box: own.box,
      turns,
      ring,
      area: Math.abs(ringArea(ring)),
      slides: slidesOf(own, cut),
    };
  });
}

/** An edge on the tile's side holds the piece square to it, but where it lies at a wall. In a tile that is no rectangle none slides. */
function slidesOf({ shape, box }: OwnPiece, { edges }: Cut): Slides {
  if (box.ring) return { along: false, across: false };
  const held = (axis: 0 | 1) =>
    [0, axis === 0 ? box.length : box.width].some((at) => {
      const lies = (from: Point, to: Point) => Math.abs(from[axis] - at) <= 1 && Math.abs(to[axis] - at) <= 1;
      const ring = shape.outer;
      const told = edges.filter(({ from, to }) => lies(from, to));
      if (told.length > 0) return told.some(({ factory }) => factory);
      return ring.some((from, i) => {
        const to = ring[(i + 1) % ring.length]!;
        return lies(from, to) && Math.hypot(to[0] - from[0], to[1] - from[1]) >= LEAST_EDGE;
      });
    });
  return { along: !held(0), across: !held(1) };
}

/** What is shorter than 1/64 in is the tip of a corner. */
const LEAST_EDGE = 127;
