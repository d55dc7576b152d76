import { type Point, type Ring, whereInRing } from '../../../src/geometry/index.ts';

/** A floor as a setter finds it: what stands on it, its pieces, and the zones in the order of work. */
export interface FloorToSet {
  readonly outline: Ring;
  /** What nobody steps over. */
  readonly solids: readonly Ring[];
  /** The closed-door line of the way out, the room on its left. */
  readonly door: readonly [Point, Point];
  readonly pieces: readonly { readonly id: string; readonly ring: Ring }[];
  readonly zones: readonly (readonly string[])[];
}

const INCH = 8128;
/** Half of what a person needs to pass sideways, a grid's step less: 11 in; common practice, no source. */
const HALF = 5.5;
/** How far a setter lays tile from where he kneels, in inches; common practice, no source. */
const REACH = 30;

const around = (radius: number) => {
  const all: Point[] = [];
  for (let x = -Math.floor(radius); x <= radius; x++)
    for (let y = -Math.floor(radius); y <= radius; y++) if (Math.hypot(x, y) <= radius) all.push([x, y]);
  return all;
};
const BODY = around(HALF);
const SIDES = [[1, 0], [-1, 0], [0, 1], [0, -1]] as const; // biome-ignore format: pairs on a line

/**
 * Pieces that a setter cannot lay from bare floor that he comes to from the way out, by flooding a grid of inches: of each zone those
 * too far from any place where he can stand with the zones before it laid. What is out of reach before anything is laid counts as his to find.
 */
export function judgeReach(floor: FloorToSet): string[] {
  const grid = gridOf(floor);
  const always = new Set(outOfReach(grid, new Set(), floor.pieces.map(({ id }) => id))); // biome-ignore format: one call
  const laid = new Set<string>();
  return floor.zones.flatMap((ids) => {
    const found = outOfReach(grid, laid, ids).filter((id) => !always.has(id));
    for (const id of ids) laid.add(id);
    return found;
  });
}

function gridOf({ outline, solids, door, pieces }: FloorToSet) {
  const [[ax, ay], [bx, by]] = door;
  const long = Math.hypot(bx - ax, by - ay);
  // The room lies on the left of the line, so what he steps out to on its right.
  const out: Point = [((by - ay) / long) * 18 * INCH, ((ax - bx) / long) * 18 * INCH];
  const beyond: Ring = [[ax, ay], [ax + out[0], ay + out[1]], [bx + out[0], by + out[1]], [bx, by]]; // biome-ignore format: a box on a line
  const [xs, ys] = ([0, 1] as const).map((k) => [...outline, ...beyond].map((point) => point[k]));
  const low: Point = [Math.min(...xs!) - INCH, Math.min(...ys!) - INCH];
  const [w, h] = [xs!, ys!].map((all, k) => Math.ceil((Math.max(...all) - low[k]!) / INCH) + 2);
  const at = (x: number, y: number): Point => [low[0] + (x + 0.5) * INCH, low[1] + (y + 0.5) * INCH];
  const inside = (point: Point, ring: Ring) => whereInRing(point, ring) !== 'outside';
  const floor = Array.from({ length: w! * h! }, (_, i) => {
    const point = at(i % w!, Math.floor(i / w!));
    return (inside(point, outline) && !solids.some((ring) => inside(point, ring))) || inside(point, beyond);
  });
  const cells = pieces.map(({ id, ring }) => {
    const [px, py] = ([0, 1] as const).map((k) => ring.map((point) => (point[k] - low[k]) / INCH));
    const own: number[] = [];
    for (let x = Math.floor(Math.min(...px!)); x <= Math.max(...px!); x++)
      for (let y = Math.floor(Math.min(...py!)); y <= Math.max(...py!); y++)
        if (inside(at(x, y), ring)) own.push(y * w! + x);
    return [id, own] as const;
  });
  const middle: Point = [(ax + bx + out[0]) / 2, (ay + by + out[1]) / 2];
  const [sx, sy] = middle.map((one, k) => Math.floor((one - low[k]!) / INCH));
  return { w: w!, h: h!, floor, cells: new Map(cells), start: sy! * w! + sx! };
}

function outOfReach(
  { w, h, floor, cells, start }: ReturnType<typeof gridOf>,
  laid: ReadonlySet<string>,
  ids: readonly string[],
): string[] {
  const bare = [...floor];
  for (const id of laid) for (const cell of cells.get(id)!) bare[cell] = false;
  const clear = bare.map((_, i) => {
    const [x, y] = [i % w, Math.floor(i / w)];
    return BODY.every(([dx, dy]) => {
      const [nx, ny] = [x + dx, y + dy];
      return nx >= 0 && ny >= 0 && nx < w && ny < h && bare[ny * w + nx]!;
    });
  });
  const stand = flood([start], clear, w, Number.POSITIVE_INFINITY);
  const covered = [...stand.keys()].flatMap((i) => BODY.map(([dx, dy]) => i + dy * w + dx));
  const reached = flood([...new Set(covered)], bare, w, REACH);
  return ids.filter((id) => {
    const own = cells.get(id)!;
    return own.length > 0 && !own.some((cell) => reached.has(cell));
  });
}

/** Cells that are open and at most so many steps away. */
function flood(from: readonly number[], open: readonly boolean[], w: number, most: number) {
  const found = new Map(from.map((cell) => [cell, 0]));
  const queue = [...found.keys()];
  for (const cell of queue) {
    const steps = found.get(cell)!;
    if (steps >= most) continue;
    for (const [dx, dy] of SIDES) {
      const next = cell + dy * w + dx;
      if (!open[next] || found.has(next)) continue;
      found.set(next, steps + 1);
      queue.push(next);
    }
  }
  return found;
}
