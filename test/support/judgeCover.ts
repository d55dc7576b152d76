import type { Ring } from '../../src/geometry/index.ts';
import { judge, toJsts } from '../geometry/oracle.ts';
import { allTiles, areaOf, type Box, boxOf, isIn, type Judged, lengthRound, ringsOf } from './Judged.ts';

// biome-ignore lint/suspicious/noExplicitAny: the library's own types do not cover its geometry.
type Geometry = any;

/** What is thinner than this, in ticks, is left over from rounding. */
const SLIVER = 2;

/**
 * Whether pieces, joints and what is left on purpose cover the field and nothing else, and whether there are
 * as many pieces as there should be. Every tile of the pattern is laid over the field by a general-purpose
 * polygon library, one by one, and compared with what was laid there. Says what is wrong; empty when nothing is.
 */
export function judgeCover(judged: Judged): string[] {
  const field = toJsts(judged.field);
  const edges = edgeBoxes(judged);
  const wrong: string[] = [];
  const byTile = piecesByTile(judged);
  for (const ring of allTiles(judged)) {
    const key = keyOf(ring);
    const own = byTile.get(key) ?? [];
    byTile.delete(key);
    const expected = expectedIn(ring, judged, edges, field);
    const area = own.reduce((sum, { shape }) => sum + areaOf(shape), 0);
    if (Math.abs(area - expected.area) > 2 * lengthRound(ring))
      wrong.push(`${own[0]?.id ?? key}: area ${area}, expected ${expected.area}`);
    const parts = own.filter(({ shape }) => (2 * areaOf(shape)) / lengthRound(shape.outer) > SLIVER).length;
    if (parts !== expected.parts)
      wrong.push(`${own[0]?.id ?? key}: ${parts} parts, expected ${expected.parts}`);
    if (expected.geometry && own.length > 0) {
      const inside = judge.intersection(toJsts(own.map(({ shape }) => shape)), expected.geometry).getArea();
      if (area - inside > 2 * lengthRound(ring)) wrong.push(`${own[0]!.id}: ${area - inside} lies outside`);
    }
  }
  for (const [key, [first]] of byTile) wrong.push(`${first!.id}: stands on no tile of the pattern (${key})`);
  return wrong;
}

interface Part {
  readonly id: string;
  readonly shape: Judged['pieces'][number]['shape'];
}

function piecesByTile({ pieces, left, ...judged }: Judged): Map<string, Part[]> {
  const map = new Map<string, Part[]>();
  const add = (ring: Ring, part: Part) => {
    map.set(keyOf(ring), [...(map.get(keyOf(ring)) ?? []), part]);
  };
  for (const { id, fullTile, shape } of pieces) add(fullTile, { id, shape });
  if (left.length > 0) {
    const tiles = allTiles({ ...judged, pieces, left });
    left.forEach(({ shape }, i) => {
      // The middle of its corners lies in the tile, which is convex, even where a bent strip goes round it.
      const [x, y] = [0, 1].map(
        (axis) => shape.outer.reduce((sum, p) => sum + p[axis]!, 0) / shape.outer.length,
      ) as [number, number];
      const ring = tiles.find((tile) => isIn([{ outer: tile, holes: [] }], x, y));
      if (ring) add(ring, { id: `left ${i}`, shape });
    });
  }
  return map;
}

function keyOf(ring: Ring): string {
  const { minX, minY } = boxOf(ring);
  return `${minX},${minY}`;
}

function expectedIn(
  ring: Ring,
  judged: Judged,
  edges: readonly Box[],
  field: Geometry,
): { area: number; parts: number; geometry?: Geometry } {
  const area = areaOf({ outer: ring, holes: [] });
  if (!meetsEdge(ring, edges)) {
    const { minX, minY, maxX, maxY } = boxOf(ring);
    return isIn(judged.field, (minX + maxX) / 2, (minY + maxY) / 2)
      ? { area, parts: 1 }
      : { area: 0, parts: 0 };
  }
  const geometry = judge.intersection(toJsts([{ outer: ring, holes: [] }]), field);
  let [total, parts] = [0, 0];
  for (let i = 0; i < geometry.getNumGeometries(); i++) {
    const part = geometry.getGeometryN(i);
    const width = (2 * part.getArea()) / Math.max(1, part.getLength());
    if (width <= SLIVER) continue;
    total += part.getArea();
    parts += 1;
  }
  return { area: total, parts, geometry };
}

/** The boxes round the edges of the field, which every tile is held against. */
function edgeBoxes({ field }: Judged): Box[] {
  return field
    .flatMap(ringsOf)
    .flatMap((ring) => ring.map((p, i) => boxOf([p, ring[(i + 1) % ring.length]!])));
}

function meetsEdge(ring: Ring, edges: readonly Box[]): boolean {
  const box = boxOf(ring);
  return edges.some(
    (own) => own.minX <= box.maxX && own.maxX >= box.minX && own.minY <= box.maxY && own.maxY >= box.minY,
  );
}
