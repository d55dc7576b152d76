import type { Cut, CutKind, Cuts } from '../cuts/Cut.ts';
import { ownPiece } from '../cuts/ownPiece.ts';
import { type Turn, turnPiece, turnsOf } from '../cuts/TileBox.ts';
import { convexHull, intersect, type Shape, shapeArea } from '../geometry/index.ts';
import type { TileSpec } from '../job/Job.ts';
import type { Layout } from '../layout/Layout.ts';
import type { CutClass } from './CutClass.ts';

const SHARES: ReadonlySet<CutKind> = new Set<CutKind>(['rip', 'corner', 'taper', 'point']);

/** The cuts of one kind of tile over all surfaces, with what their pieces cover in the axes of the cut. */
export function cutClasses(tile: TileSpec, layouts: readonly Layout[], cutsOf: readonly Cuts[]): CutClass[] {
  const made = layouts.flatMap((layout, i) => {
    const cuts = cutsOf[i]!.cuts.filter((cut) => cut.tile === tile.key);
    const pieceOf = new Map(layout.pieces.map((piece) => [piece.id, piece]));
    const upright = (id: string, turn: Turn) =>
      turnPiece(ownPiece(pieceOf.get(id)!), ((360 - turn) % 360) as Turn);
    const named = (id: string) => (layouts.length > 1 ? `${layout.surface}:${id}` : id);
    return cuts.map((cut) => ({
      cut,
      pieces: cut.pieces.map(named),
      own: cut.pieces.map((id, k) => upright(id, cut.turns?.[k] ?? 0)),
    }));
  });
  return made.map(({ cut, pieces, own }, id): CutClass => {
    const box = own[0]!.box;
    const rings = own.map(({ shape }) => shape.outer);
    const areas = own.map(({ shape }) => shapeArea(shape));
    return {
      id,
      cut,
      pieces,
      box,
      turns: turnsOf(tile.turns, box),
      around: convexHull(rings.flat()),
      within: commonShape(own.map(({ shape }) => shape)),
      area: Math.max(...areas),
      leastArea: Math.min(...areas),
      shares: SHARES.has(cut.kind) && cut.shape.holes.length === 0,
      pinned: isPinned(cut),
    };
  });
}

/** What all shapes have in common; they differ by less than the saw's step. */
function commonShape(shapes: readonly Shape[]): Shape {
  const distinct = new Map(shapes.map((shape) => [JSON.stringify(shape), shape]));
  const largest = (parts: readonly Shape[]) =>
    parts.length === 0 ? undefined : parts.reduce((a, b) => (shapeArea(b) > shapeArea(a) ? b : a));
  return [...distinct.values()].reduce((common, next) => largest(intersect([common], [next])) ?? common);
}

function isPinned({ edges }: Cut): boolean {
  const factory = edges.filter((edge) => edge.factory);
  const upright = factory.some(({ from, to }) => Math.abs(to[1] - from[1]) > Math.abs(to[0] - from[0]));
  const level = factory.some(({ from, to }) => Math.abs(to[1] - from[1]) < Math.abs(to[0] - from[0]));
  return upright && level;
}
