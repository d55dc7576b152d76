import { type Point, type Ring, whereInRing } from '../../../src/geometry/index.ts';

/** A zone as it is begun: the floor, what nobody steps over, the way out, the tile that lies there already and the zone's own. */
export interface ZoneToBegin {
  readonly outline: Ring;
  readonly solids: readonly Ring[];
  /** The closed-door line of the way out, the room on its left. */
  readonly door: readonly [Point, Point];
  readonly laid: readonly Ring[];
  readonly own: readonly { readonly id: string; readonly ring: Ring }[];
  readonly first: string;
}

/** In inches: half of what a person passes, how far he lays tile from where he kneels, and how far from the first piece before he moves on. */
export interface Measures {
  readonly half: number;
  readonly reach: number;
  readonly by: number;
}

/** A piece that is shut off, and how far one walks to it from the way out, in inches. */
export interface ShutOffPiece {
  readonly id: string;
  readonly walk: number;
}

const INCH = 8128;
const SIDES = [[1, 0], [-1, 0], [0, 1], [0, -1]] as const; // biome-ignore format: pairs on a line

/**
 * The pieces of a zone that a setter could lay before, and cannot any more once the first piece and what lies by it is laid, by flooding a
 * grid of inches from the way out with a body as wide as a person, and from there as far as he reaches.
 */
export function judgeShutOff(zone: ZoneToBegin, measures: Measures): readonly ShutOffPiece[] {
  const grid = gridOf(zone);
  const cellsOf = new Map(zone.own.map(({ id, ring }) => [id, grid.cellsIn(ring)] as const));
  const laid = zone.laid.flatMap(grid.cellsIn);
  const start = cellsOf.get(zone.first)!;
  const near = zone.own.filter(({ id }) => {
    const cells = cellsOf.get(id)!.map(grid.placeOf);
    const middle = [0, 1].map((k) => cells.reduce((sum, cell) => sum + cell[k]!, 0) / cells.length);
    return start
      .map(grid.placeOf)
      .some(([x, y]) => Math.hypot(x - middle[0]!, y - middle[1]!) <= measures.by);
  });
  const before = walked(grid, laid, measures);
  const nearCells = near.flatMap(({ id }) => cellsOf.get(id)!);
  const after = walked(grid, [...laid, ...nearCells], measures);
  const nearIds = new Set(near.map(({ id }) => id));
  return zone.own.flatMap(({ id }) => {
    const cells = cellsOf.get(id)!;
    if (nearIds.has(id) || cells.length === 0 || cells.some((cell) => after.reached.has(cell))) return [];
    const ways = cells.flatMap((cell) => before.reached.get(cell) ?? []);
    return ways.length > 0 ? [{ id, walk: Math.min(...ways) }] : [];
  });
}

/** How far one walks from the way out to each piece of a zone before any of it lies, in inches along the axes. */
export function judgeWalks(zone: ZoneToBegin, measures: Measures): ReadonlyMap<string, number> {
  const grid = gridOf(zone);
  const { reached } = walked(grid, zone.laid.flatMap(grid.cellsIn), measures);
  const ways = zone.own.map(
    ({ id, ring }) => [id, grid.cellsIn(ring).flatMap((cell) => reached.get(cell) ?? [])] as const,
  );
  return new Map(ways.flatMap(([id, own]) => (own.length > 0 ? [[id, Math.min(...own)] as const] : [])));
}

type Grid = ReturnType<typeof gridOf>;

function gridOf({ outline, solids, door: [a, b] }: ZoneToBegin) {
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
  // The room lies on the left of the line, so what he steps out to on its right.
  const out: Point = [((b[1] - a[1]) / long) * 18 * INCH, ((a[0] - b[0]) / long) * 18 * INCH];
  const beyond: Ring = [a, [a[0] + out[0], a[1] + out[1]], [b[0] + out[0], b[1] + out[1]], b];
  const all = [...outline, ...beyond];
  const low: Point = [Math.min(...all.map(([x]) => x)) - INCH, Math.min(...all.map(([, y]) => y)) - INCH];
  const w = Math.ceil((Math.max(...all.map(([x]) => x)) - low[0]) / INCH) + 2;
  const h = Math.ceil((Math.max(...all.map(([, y]) => y)) - low[1]) / INCH) + 2;
  const placeOf = (cell: number): Point => [(cell % w) + 0.5, Math.floor(cell / w) + 0.5];
  const isIn = (cell: number, ring: Ring) => {
    const [x, y] = placeOf(cell);
    return whereInRing([low[0] + x * INCH, low[1] + y * INCH], ring) !== 'outside';
  };
  const cells = Array.from({ length: w * h }, (_, cell) => cell);
  const floor = cells.map(
    (cell) => (isIn(cell, outline) && !solids.some((ring) => isIn(cell, ring))) || isIn(cell, beyond),
  );
  const cellsIn = (ring: Ring): number[] => {
    const [xs, ys] = [ring.map(([x]) => (x - low[0]) / INCH), ring.map(([, y]) => (y - low[1]) / INCH)];
    const found: number[] = [];
    for (let y = Math.floor(Math.min(...ys)); y <= Math.max(...ys); y++)
      for (let x = Math.floor(Math.min(...xs)); x <= Math.max(...xs); x++)
        if (isIn(y * w + x, ring)) found.push(y * w + x);
    return found;
  };
  const middle = [0, 1].map((k) => Math.floor(((a[k]! + b[k]! + out[k]!) / 2 - low[k]!) / INCH));
  return { w, h, floor, placeOf, cellsIn, start: middle[1]! * w + middle[0]! };
}

/** The bare cells that are reached from where a body comes to, each with the inches one walks and reaches to it. */
function walked({ w, h, floor, start }: Grid, laid: readonly number[], { half, reach }: Measures) {
  const bare = [...floor];
  for (const cell of laid) bare[cell] = false;
  const body: Point[] = [];
  const most = Math.floor(half);
  for (let x = -most; x <= most; x++)
    for (let y = -most; y <= most; y++) if (Math.hypot(x, y) <= half) body.push([x, y]);
  const clear = bare.map((_, cell) =>
    body.every(([dx, dy]) => {
      const [x, y] = [(cell % w) + dx, Math.floor(cell / w) + dy];
      return x >= 0 && y >= 0 && x < w && y < h && bare[y * w + x]!;
    }),
  );
  const stood = flood(new Map([[start, 0]]), clear, w, Number.POSITIVE_INFINITY);
  const under = new Map<number, number>();
  for (const [cell, way] of stood)
    for (const [dx, dy] of body) if (!under.has(cell + dy * w + dx)) under.set(cell + dy * w + dx, way);
  return { reached: flood(under, bare, w, reach) };
}

/** Cells that are open, and at most so many steps from some that have their steps already. */
function flood(from: ReadonlyMap<number, number>, open: readonly boolean[], w: number, most: number) {
  const found = new Map(from);
  let edge = [...found.keys()];
  for (let step = 0; edge.length > 0 && step < most; step += 1) {
    const next: number[] = [];
    for (const cell of edge)
      for (const [dx, dy] of SIDES) {
        const beside = cell + dy * w + dx;
        if (!open[beside] || found.has(beside)) continue;
        found.set(beside, found.get(cell)! + 1);
        next.push(beside);
      }
    edge = next;
  }
  return found;
}
