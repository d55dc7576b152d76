import { distancePoints, type Point, type Ring, side } from '../../geometry/index.ts';
import type { FieldEdge } from '../frame/fieldEdges.ts';
import type { BorderTile } from './borderTiles.ts';
import type { Through } from './throughTile.ts';

/** A part of the field's edge that runs through a tile from side to side. */
export interface Chain {
  readonly points: readonly Point[];
  /** Where it comes in and goes out, measured round the tile: number of the side and the part of it. */
  readonly inAt: number;
  readonly outAt: number;
}

/** Two ends nearer than this on the tile's edge, as part of a side, cannot be told apart. */
const HAIR = 1e-6;

/**
 * The chains that the field's edges make in a tile; null where they cannot be told apart safely: a ring
 * that closes inside the tile, or two ends that meet on its edge.
 */
export function chainsIn({ ring, crossings }: BorderTile, edges: readonly FieldEdge[]): Chain[] | null {
  const chains: Chain[] = [];
  let used = 0;
  for (const [first, through] of crossings) {
    if (through.inAt < 0) continue;
    const start = pointAt(edges[first]!, through.from, sideOf(ring, through.inAt));
    const points: Point[] = [start];
    let edge = first;
    let last: Through | undefined = through;
    used++;
    while (last && last.outAt < 0) {
      points.push(edges[edge]!.to);
      edge = edges[edge]!.next;
      last = crossings.get(edge);
      used++;
    }
    if (!last) return null;
    const end = pointAt(edges[edge]!, last.to, sideOf(ring, last.outAt));
    points.push(end);
    chains.push({ points, inAt: around(ring, through.inAt, start), outAt: around(ring, last.outAt, end) });
  }
  return used === crossings.size && chains.length > 0 && apart(chains, ring.length) ? chains : null;
}

type TileEdge = readonly [from: Point, to: Point];

function sideOf(ring: Ring, number: number): TileEdge {
  return [ring[number]!, ring[(number + 1) % ring.length]!];
}

/** Where an edge of the field crosses a side of a tile, in whole ticks that do not lie outside the tile: the joint beside it keeps its width. */
function pointAt({ from, to }: FieldEdge, part: number, [p, q]: TileEdge): Point {
  if (part <= 0) return from;
  if (part >= 1) return to;
  const [x, y] = [from[0] + part * (to[0] - from[0]), from[1] + part * (to[1] - from[1])];
  const nearest: Point = [Math.round(x) + 0, Math.round(y) + 0];
  if (side(p, q, nearest) >= 0) return nearest;
  const around = [Math.floor(x), Math.ceil(x)].flatMap((u) =>
    [Math.floor(y), Math.ceil(y)].map((v): Point => [u + 0, v + 0]),
  );
  const inside = around.filter((point) => side(p, q, point) >= 0);
  const far = (point: Point) => distancePoints(point, [x, y]);
  return inside.reduce((best, one) => (far(one) < far(best) ? one : best), inside[0] ?? nearest);
}

function around(ring: Ring, number: number, point: Point): number {
  const [p, q] = sideOf(ring, number);
  return number + Math.min(1, distancePoints(p, point) / distancePoints(p, q));
}

/** Ends that meet leave it open which of them comes first round the tile, or which side of a speck is meant. */
function apart(chains: readonly Chain[], sides: number): boolean {
  if (chains.length === 1) return areApart(chains[0]!.inAt % sides, chains[0]!.outAt % sides, sides);
  const ends = chains
    .flatMap(({ inAt, outAt }) => [inAt % sides, outAt % sides])
    .sort((one, other) => one - other);
  return ends.every((end, i) => (i === 0 ? end + sides : end) - ends.at(i - 1)! > HAIR);
}

/** The same of two ends, which is what most tiles have. */
function areApart(one: number, other: number, sides: number): boolean {
  const [low, high] = one < other ? [one, other] : [other, one];
  return low + sides - high > HAIR && high - low > HAIR;
}
