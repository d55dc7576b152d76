import { distancePointSegment, type Point, type Shape } from '../../geometry/index.ts';
import type { Face } from '../frame/Face.ts';
import type { FieldEdge } from '../frame/fieldEdges.ts';
import type { Ground } from '../frame/Ground.ts';
import type { BorderTile } from './borderTiles.ts';
import { clipTile } from './clipTile.ts';
import { cutPiece } from './cutPiece.ts';
import { gapOnly } from './gapOnly.ts';
import { keptGap, ROUNDING } from './keptGap.ts';
import type { LaidPiece, LeftPart } from './LaidPiece.ts';
import { wholeTile } from './wholeTile.ts';

/** What becomes of one tile at the field's edge. */
export interface LaidTile {
  readonly pieces: readonly LaidPiece[];
  readonly left: readonly LeftPart[];
}

/** A tile that the field's edge runs through: cut, kept whole, or left out where its strip is only gap. */
export function layTile(ground: Ground, tile: BorderTile, joint: number): LaidTile {
  const { faces, edges, frame, flat } = ground;
  const shapes = clipTile(tile, edges, frame.field);
  if (shapes.length === 0) return { pieces: [], left: [] };
  const concerned = facesOfTile(tile, edges);
  const kept = keptGap(tile.ring, shapes, faces, concerned);
  if (kept) return { pieces: [keptWhole(tile, kept, faces)], left: [] };
  const pieces: LaidPiece[] = [];
  const left: LeftPart[] = [];
  for (const shape of shapes) {
    const own = shapes.length === 1 ? concerned : facesOfShape(tile, edges, shape);
    const out = gapOnly(shape, faces, own, joint);
    if (out) left.push({ place: tile.place, shape, ...out });
    else pieces.push(cutPiece(tile.place, tile.ring, shape, own, faces, flat));
  }
  return { pieces, left };
}

function keptWhole(
  { place, ring }: BorderTile,
  kept: { face: number; gap: number },
  faces: readonly Face[],
): LaidPiece {
  const taken = faces[kept.face]!.gap - kept.gap;
  return { ...wholeTile(place, ring), ...(taken > ROUNDING && { kept }) };
}

function facesOfTile({ crossings }: BorderTile, edges: readonly FieldEdge[]): number[] {
  return [...new Set([...crossings.keys()].map((edge) => edges[edge]!.face))];
}

/** Where a tile falls into several pieces: the faces of the edges that run along this one. */
function facesOfShape(
  { crossings }: BorderTile,
  edges: readonly FieldEdge[],
  { outer, holes }: Shape,
): number[] {
  const along = [...crossings].filter(([index, { from, to }]) => {
    const { from: a, to: b } = edges[index]!;
    const part = (from + to) / 2;
    const middle: Point = [a[0] + part * (b[0] - a[0]), a[1] + part * (b[1] - a[1])];
    return [outer, ...holes].some((ring) =>
      ring.some((p, i) => distancePointSegment(middle, p, ring[(i + 1) % ring.length]!) <= ROUNDING),
    );
  });
  return [...new Set(along.map(([index]) => edges[index]!.face))];
}
