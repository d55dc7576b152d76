import { cleanRing, intersect, isSliver, type Point, type Ring, type Shape } from '../../geometry/index.ts';
import type { FieldEdge } from '../frame/fieldEdges.ts';
import type { BorderTile } from './borderTiles.ts';
import { type Chain, chainsIn } from './chainsIn.ts';

/**
 * The part of a tile that lies in the field: none, one, or several shapes in whole ticks. The field's edge
 * is followed through the tile and closed along the tile's own edge; where that cannot be done safely the
 * general overlay decides.
 */
export function clipTile(tile: BorderTile, edges: readonly FieldEdge[], field: readonly Shape[]): Shape[] {
  const chains = chainsIn(tile, edges);
  if (!chains) return intersect([{ outer: tile.ring, holes: [] }], field);
  return closeChains(tile.ring, chains)
    .map(cleanRing)
    .filter((ring) => !isSliver(ring))
    .map((outer) => ({ outer, holes: [] }));
}

/** From the end of each chain along the tile's edge, counter-clockwise, to the next beginning of one. */
function closeChains(ring: Ring, chains: readonly Chain[]): Point[][] {
  if (chains.length === 1) {
    const { points, inAt, outAt } = chains[0]!;
    return [[...points, ...cornersBetween(ring, outAt, inAt)]];
  }
  const rings: Point[][] = [];
  const left = new Set(chains);
  for (const first of chains) {
    if (!left.has(first)) continue;
    const points: Point[] = [];
    let chain = first;
    do {
      left.delete(chain);
      points.push(...chain.points);
      const next = nextAfter(chain.outAt, chains, ring.length);
      points.push(...cornersBetween(ring, chain.outAt, next.inAt));
      chain = next;
    } while (left.has(chain));
    rings.push(points);
  }
  return rings;
}

function nextAfter(at: number, chains: readonly Chain[], n: number): Chain {
  const ahead = ({ inAt }: Chain) => (inAt - at + n) % n || n;
  return chains.reduce((nearest, one) => (ahead(one) < ahead(nearest) ? one : nearest));
}

/** Corners of the tile passed on the way round from one place on its edge to another. */
function cornersBetween(ring: Ring, from: number, to: number): Point[] {
  const n = ring.length;
  const end = to > from ? to : to + n;
  const corners: Point[] = [];
  for (let corner = Math.floor(from) + 1; corner < end; corner++) corners.push(ring[corner % n]!);
  return corners;
}
