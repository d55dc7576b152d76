import type { Point, Shape } from '../../src/geometry/index.ts';
import { areaOf, boxOf, isIn, type Judged, lengthRound, ringsOf } from './Judged.ts';

/**
 * Counts pieces by flood fill on a fine raster that knows the pattern only as arithmetic and the field only as
 * a set of points: each flooded patch must lie in one piece (or in what was left out), and every piece wider
 * than two cells must be flooded. Says what is wrong; empty when nothing is.
 */
export function judgeCount(judged: Judged, cellsAcrossTile = 12): string[] {
  const widths = judged.tiles
    .map(boxOf)
    .map((tile) => Math.min(tile.maxX - tile.minX, tile.maxY - tile.minY));
  const cell = Math.min(...widths) / cellsAcrossTile;
  const raster = rasterOf(judged, cell);
  const ownerOf = ownersBy(judged);
  const wrong: string[] = [];
  const flooded = new Set<string>();
  for (const patch of patches(raster)) {
    const owners = new Set(patch.map((at) => ownerOf(raster.tiles[at]!, raster.point(at))));
    // What parts two pieces of one tile, or a piece from what its tile leaves out, may be narrower than a cell: a patch lies in
    // one tile, and whether the parts are apart is asked by `judgeCover`, which counts them.
    const tiles = new Set([...owners].filter((one) => one !== LEFT).map((one) => one.replace(/[b-e]$/, '')));
    if (tiles.size > 1) wrong.push(`one patch lies in ${[...owners].join(' and ')}`);
    if (owners.has(NOBODY)) wrong.push(`a patch at ${raster.point(patch[0]!)} lies in no piece`);
    for (const owner of owners) flooded.add(owner);
  }
  for (const { id, shape } of judged.pieces) {
    const width = (2 * areaOf(shape)) / lengthRound(shape.outer);
    if (width > 2.5 * cell && !flooded.has(id)) wrong.push(`${id} was never flooded`);
  }
  return wrong;
}

interface Raster {
  readonly across: number;
  /** The tile each cell stands in, '' for joints and outside the field. */
  readonly tiles: readonly string[];
  readonly point: (at: number) => Point;
}

function rasterOf(judged: Judged, cell: number): Raster {
  const box = boxOf(judged.field.flatMap(({ outer }) => outer));
  const across = Math.ceil((box.maxX - box.minX) / cell);
  const up = Math.ceil((box.maxY - box.minY) / cell);
  const xOf = (column: number) => box.minX + (column + 0.5) * cell;
  const yOf = (row: number) => box.minY + (row + 0.5) * cell;
  const point = (at: number): Point => [xOf(at % across), yOf(Math.floor(at / across))];
  const tileAt = tileFinder(judged);
  const tiles: string[] = [];
  for (let row = 0; row < up; row++) {
    const y = yOf(row);
    const crossings = crossingsAt(judged.field, y);
    let passed = 0;
    for (let column = 0; column < across; column++) {
      const x = xOf(column);
      while (crossings[passed]! <= x) passed++;
      tiles.push((crossings.length - passed) % 2 === 1 ? tileAt(x, y) : '');
    }
  }
  return { across, tiles, point };
}

/** Where a level line crosses the edges of shapes, from left to right. */
function crossingsAt(shapes: readonly Shape[], y: number): number[] {
  const rings = shapes.flatMap(ringsOf);
  const crossed = rings.flatMap((ring) =>
    ring.flatMap(([px, py], i) => {
      const [qx, qy] = ring[(i + 1) % ring.length]!;
      return py > y === qy > y ? [] : [px + ((y - py) / (qy - py)) * (qx - px)];
    }),
  );
  return crossed.sort((one, other) => one - other);
}

/** Finds the lower left corner of the tile that a point stands in, by arithmetic; '' in a joint. */
function tileFinder({ a, b, tiles, origin }: Judged): (x: number, y: number) => string {
  const area = a[0] * b[1] - a[1] * b[0];
  const inRepeats = ([qx, qy]: Point): Point => [
    (qx * b[1] - qy * b[0]) / area,
    (qy * a[0] - qx * a[1]) / area,
  ];
  const all = tiles.map((ring) => ({
    shapes: [{ outer: ring, holes: [] }],
    box: boxOf(ring),
    reach: boxOf(ring.map(inRepeats)),
  }));
  return (x, y) => {
    const [px, py] = [x - origin[0], y - origin[1]];
    const [u, v] = inRepeats([px, py]);
    for (const { shapes, box, reach } of all) {
      // The repeats whose tile may hold the point: it less any corner of the tile.
      for (let j = Math.floor(v - reach.maxY); j <= Math.ceil(v - reach.minY); j++) {
        for (let i = Math.floor(u - reach.maxX); i <= Math.ceil(u - reach.minX); i++) {
          const [sx, sy] = [i * a[0] + j * b[0], i * a[1] + j * b[1]];
          const [dx, dy] = [px - sx, py - sy];
          if (dx <= box.minX || dx >= box.maxX || dy <= box.minY || dy >= box.maxY) continue;
          if (isIn(shapes, dx, dy)) return `${origin[0] + sx + box.minX},${origin[1] + sy + box.minY}`;
        }
      }
    }
    return '';
  };
}

function patches({ across, tiles }: Raster): number[][] {
  const seen = new Uint8Array(tiles.length);
  const found: number[][] = [];
  for (let start = 0; start < tiles.length; start++) {
    if (tiles[start] === '' || seen[start]) continue;
    const patch = [start];
    seen[start] = 1;
    for (let next = 0; next < patch.length; next++) {
      const at = patch[next]!;
      const x = at % across;
      for (const other of [x > 0 ? at - 1 : -1, x + 1 < across ? at + 1 : -1, at - across, at + across]) {
        if (tiles[other] !== tiles[at] || seen[other]) continue;
        seen[other] = 1;
        patch.push(other);
      }
    }
    found.push(patch);
  }
  return found;
}

const NOBODY = 'nobody';
const LEFT = 'left';

const NUDGES = [
  [0, 0],
  [2, 0],
  [-2, 0],
  [0, 2],
  [0, -2],
] as const;

/** The piece of a tile in which a point lies. What is left out on purpose owns its points too. */
function ownersBy({ pieces, left }: Judged): (tile: string, point: Point) => string {
  const byTile = new Map<string, typeof pieces>();
  for (const piece of pieces) {
    const { minX, minY } = boxOf(piece.fullTile);
    const key = `${minX},${minY}`;
    byTile.set(key, [...(byTile.get(key) ?? []), piece]);
  }
  return (tile, [x, y]) => {
    // Rounded corners may leave a cell's middle a tick or two outside the piece it belongs to.
    for (const [dx, dy] of NUDGES) {
      const owner = byTile.get(tile)?.find(({ shape }) => isIn([shape], x + dx, y + dy));
      if (owner) return owner.id;
      if (left.some(({ shape }) => isIn([shape], x + dx, y + dy))) return LEFT;
    }
    return NOBODY;
  };
}
