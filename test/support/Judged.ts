import type { Point, Ring, Shape } from '../../src/geometry/index.ts';
import type { Layout } from '../../src/layout/Layout.ts';

/** What a judge looks at: a pattern as pure repetition, the field, and what was laid. All in one frame, in ticks. */
export interface Judged {
  readonly a: Point;
  readonly b: Point;
  /** Rings of one repeat, in its own place. */
  readonly tiles: readonly Ring[];
  readonly origin: Point;
  readonly joint: number;
  /** Soft joints that are laid wider than the others: the middle of each on the floor, and its width. */
  readonly wide?: readonly { readonly axis: 0 | 1; readonly at: number; readonly width: number }[];
  readonly field: readonly Shape[];
  readonly pieces: readonly { readonly id: string; readonly fullTile: Ring; readonly shape: Shape }[];
  readonly left: readonly { readonly shape: Shape }[];
}

/** A layout as a judge sees it. */
export function judged(layout: Layout): Judged {
  const { pattern, origin, field, pieces, left, movement } = layout;
  const { a, b, joint } = pattern;
  const lines = movement?.laid ? movement.lines.filter(({ width }) => width > joint) : [];
  const wide = lines.map(({ axis, at, width }) => ({ axis: axis === 'along' ? 0 : 1, at, width }) as const);
  return { a, b, tiles: pattern.tiles.map(({ ring }) => ring), origin, joint, wide, field, pieces, left };
}

/** The field of a layout with a border, without the border, as a judge sees it. */
export function fieldOf(layout: Layout): Judged {
  const { pieces, left, inner = layout.field } = layout;
  return {
    ...judged(layout),
    field: inner,
    pieces: pieces.filter((piece) => !piece.border),
    left: left.filter(({ shape }) => isIn(inner, ...middleOf(shape))),
  };
}

/** The middle of a shape's corners. */
function middleOf({ outer }: Shape): Point {
  const [x, y] = [0, 1].map((axis) => outer.reduce((sum, p) => sum + p[axis]!, 0) / outer.length);
  return [x!, y!];
}

export interface Box {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

export function boxOf(points: readonly Point[]): Box {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of points) {
    [minX, minY] = [Math.min(minX, x), Math.min(minY, y)];
    [maxX, maxY] = [Math.max(maxX, x), Math.max(maxY, y)];
  }
  return { minX, minY, maxX, maxY };
}

/** Every tile of the pattern whose box meets the field's box: plainly one after another, far more than are needed. */
export function allTiles(floor: Judged): Ring[] {
  const { a, b, tiles, origin, field } = floor;
  const box = boxOf(field.flatMap(({ outer }) => outer));
  const own = boxOf(tiles.flat());
  const [wide, high] = [own.maxX - own.minX, own.maxY - own.minY];
  const area = a[0] * b[1] - a[1] * b[0];
  // The corners of the field's box, a repeat's tiles wider all round, as counted in repeats.
  const corners = [box.minX - own.minX - wide, box.maxX - own.minX + wide].flatMap((x) =>
    [box.minY - own.minY - high, box.maxY - own.minY + high].map((y): Point => {
      const [px, py] = [x - origin[0], y - origin[1]];
      return [(px * b[1] - py * b[0]) / area, (py * a[0] - px * a[1]) / area];
    }),
  );
  const reach = boxOf(corners);
  const found: Ring[] = [];
  for (let j = Math.floor(reach.minY); j <= reach.maxY + 1; j++) {
    for (let i = Math.floor(reach.minX); i <= reach.maxX + 1; i++) {
      for (const ring of tiles) {
        const repeated = ring.map(([x, y]): Point => {
          return [origin[0] + i * a[0] + j * b[0] + x, origin[1] + i * a[1] + j * b[1] + y];
        });
        const placed = inPlace(repeated, floor);
        const one = boxOf(placed);
        if (one.minX < box.maxX && one.maxX > box.minX && one.minY < box.maxY && one.maxY > box.minY)
          found.push(placed);
      }
    }
  }
  return found;
}

/** A tile pushed on by each wide joint that it lies beyond, one after the other from the low end; a tile is larger than any of them is wide. */
function inPlace(ring: Ring, { wide = [], joint }: Judged): Ring {
  return [...wide]
    .sort((one, other) => one.at - other.at)
    .reduce((placed, { axis, at, width }) => {
      const on = placed.map((point) => point[axis]);
      if ((Math.min(...on) + Math.max(...on)) / 2 <= at) return placed;
      const by = width - joint;
      return placed.map(([x, y]): Point => (axis === 0 ? [x + by, y] : [x, y + by]));
    }, ring);
}

export function ringsOf({ outer, holes }: Shape): Ring[] {
  return [outer, ...holes];
}

/** Whether a point lies in a set of shapes, by counting crossings. */
export function isIn(shapes: readonly Shape[], x: number, y: number): boolean {
  let crossings = 0;
  for (const { outer, holes } of shapes) {
    crossings += crossingsOf(outer, x, y);
    for (const hole of holes) crossings += crossingsOf(hole, x, y);
  }
  return crossings % 2 === 1;
}

/** How many sides of a ring a line crosses that goes from a point to the right. */
function crossingsOf(ring: Ring, x: number, y: number): number {
  let crossings = 0;
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
    const [px, py] = ring[i]!;
    const [qx, qy] = ring[j]!;
    if (py > y !== qy > y && x < px + ((y - py) / (qy - py)) * (qx - px)) crossings++;
  }
  return crossings;
}

export function areaOf(shape: Shape): number {
  const signed = (ring: Ring) =>
    ring.reduce((sum, [x, y], i) => {
      const [u, v] = ring[(i + 1) % ring.length]!;
      return sum + (x * v - u * y) / 2;
    }, 0);
  return ringsOf(shape).reduce((sum, ring) => sum + signed(ring), 0);
}

export function lengthRound(ring: Ring): number {
  return ring.reduce((sum, [x, y], i) => {
    const [u, v] = ring[(i + 1) % ring.length]!;
    return sum + Math.hypot(u - x, v - y);
  }, 0);
}
