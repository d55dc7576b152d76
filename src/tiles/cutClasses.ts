import type { Cut, CutKind, Cuts } from '../cuts/Cut.ts';
import { turnsOf } from '../cuts/TileBox.ts';
import { uprightPieces } from '../cuts/uprightPieces.ts';
import { clipConvex, convexHull, type Ring, shapeArea } from '../geometry/index.ts';
import type { Job, TileSpec } from '../job/Job.ts';
import type { Layout } from '../layout/Layout.ts';
import type { CutClass } from './CutClass.ts';

const SHARES: ReadonlySet<CutKind> = new Set<CutKind>(['rip', 'corner', 'taper', 'point']);

/** The cuts of one kind of tile over all surfaces, with what their pieces cover in the axes of the cut. */
export function cutClasses(
  job: Job,
  tile: TileSpec,
  layouts: readonly Layout[],
  cutsOf: readonly Cuts[],
): CutClass[] {
  const made = layouts.flatMap((layout, i) => {
    const cuts = cutsOf[i]!.cuts.filter((cut) => cut.tile === tile.key);
    const upright = new Map(uprightPieces(job, layout).map((piece) => [piece.id, piece.piece]));
    const named = (id: string) => (layouts.length > 1 ? `${layout.surface}:${id}` : id);
    return cuts.map((cut) => ({
      cut,
      pieces: cut.pieces.map(named),
      own: cut.pieces.map((id) => upright.get(id)!),
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
      within: commonRing(rings),
      area: Math.max(...areas),
      leastArea: Math.min(...areas),
      shares: SHARES.has(cut.kind) && cut.shape.holes.length === 0,
      pinned: isPinned(cut),
    };
  });
}

/** What all rings have in common; they differ by less than the saw's step. */
function commonRing(rings: readonly Ring[]): Ring {
  const distinct = new Map(rings.map((ring) => [JSON.stringify(ring), ring]));
  return [...distinct.values()].reduce((common, ring) => clipConvex(common, convexHull(ring))[0] ?? common);
}

function isPinned({ edges }: Cut): boolean {
  const factory = edges.filter((edge) => edge.factory);
  const upright = factory.some(({ from, to }) => Math.abs(to[1] - from[1]) > Math.abs(to[0] - from[0]));
  const level = factory.some(({ from, to }) => Math.abs(to[1] - from[1]) < Math.abs(to[0] - from[0]));
  return upright && level;
}
