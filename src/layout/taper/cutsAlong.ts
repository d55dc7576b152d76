import { bounds } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { Ground } from '../frame/Ground.ts';
import type { LaidPiece } from '../pieces/LaidPiece.ts';
import type { WallLine } from './wallLines.ts';

/** The narrowest and the widest that tiles are cut along a wall, measured square to the pattern's axis; undefined where none is cut. */
export function cutsAlong(
  line: Pick<WallLine, 'axis' | 'faces'>,
  laid: readonly LaidPiece[],
  { edges }: Pick<Ground, 'edges'>,
): { readonly narrow: Ticks; readonly wide: Ticks } | undefined {
  const own = edges.filter(({ face }) => line.faces.includes(face));
  const cuts = laid
    .filter(({ whole, faces }) => !whole && faces.some((face) => line.faces.includes(face)))
    .flatMap((piece) => own.flatMap((edge) => depths(piece, edge, line.axis)));
  if (cuts.length === 0) return undefined;
  return { narrow: Math.round(Math.min(...cuts)), wide: Math.round(Math.max(...cuts)) };
}

/** What is left of a tile in front of an edge of the field, where the edge comes in over the tile and where it leaves it. */
function depths({ ring }: LaidPiece, { from, to }: Ground['edges'][number], axis: 0 | 1): readonly number[] {
  const across = axis === 0 ? 1 : 0;
  const box = bounds(ring);
  const [low, high] = axis === 0 ? [box.minX, box.maxX] : [box.minY, box.maxY];
  const [near, far] = axis === 0 ? [box.minY, box.maxY] : [box.minX, box.maxX];
  const start = Math.max(low, Math.min(from[axis], to[axis]));
  const end = Math.min(high, Math.max(from[axis], to[axis]));
  if (end <= start) return [];
  const at = (place: number) =>
    from[across] + ((to[across] - from[across]) * (place - from[axis])) / (to[axis] - from[axis]);
  // The field lies on the left of its edges.
  const isLow = axis === 0 ? to[0] > from[0] : to[1] < from[1];
  const all = [at(start), at(end)].map((level) => (isLow ? far - level : level - near));
  if (Math.max(...all) <= 0 || Math.min(...all) >= far - near) return [];
  return all.map((depth) => Math.min(far - near, Math.max(0, depth)));
}
