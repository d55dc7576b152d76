import type { Cut } from '../cuts/Cut.ts';
import type { Point, Ring } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { TileSides } from './cutFrame.ts';

/** A tile this many times as long as wide is a plank: the long way between its ends says nothing. Common practice, no source. */
const PLANK = 3;
/** An edge that leans by less than this share of its length is drawn as well where its middle is left out. */
const LEVEL = 0.02;

/** A cut and its tile, shorter than they are, and the gap from which their middle was left out, along the tile from its left end. */
export interface Shortened {
  readonly cut: Cut;
  readonly tile: TileSides;
  readonly gap: readonly [Ticks, Ticks];
}

/** What stays of the free length at each end of it, the gap between, and the least that is left out, in ticks. */
export interface Stays {
  readonly end: Ticks;
  readonly gap: Ticks;
  readonly least: Ticks;
}

/**
 * A cut of a plank as an engineering drawing shows what is too long for it: the longest stretch without an end of an edge or a size, a slant
 * or a circle is left out; all else keeps its shape. Its sizes stay what they are. Undefined where the tile is no plank, or too little can be left out.
 */
export function shortened(cut: Cut, tile: TileSides, stays: Stays): Shortened | undefined {
  if (tile.shape || tile.length < PLANK * tile.width) return undefined;
  const [from, to] = longestFree(cut, tile);
  const out = to - from - 2 * stays.end - stays.gap;
  if (out < stays.least) return undefined;
  const start = from + stays.end;
  const place = ([x, y]: Point): Point => [x > start ? x - out : x, y];
  const ring = (points: Ring) => points.map(place);
  return {
    cut: {
      ...cut,
      shape: { outer: ring(cut.shape.outer), holes: cut.shape.holes.map(ring) },
      circles: cut.circles.map((circle) => ({ ...circle, centre: place(circle.centre) })),
      edges: cut.edges.map((edge) => ({
        ...edge,
        from: place(edge.from),
        to: place(edge.to),
        ...(edge.via && { via: place(edge.via) }),
      })),
      sizes: cut.sizes.map((size) => ({ ...size, at: [place(size.at[0]), place(size.at[1])] as const })),
    },
    tile: { ...tile, length: tile.length - out },
    gap: [start, start + stays.gap],
  };
}

/** Where along the tile nothing begins, ends, slants or bends for the longest. */
function longestFree(cut: Cut, tile: TileSides): readonly [Ticks, Ticks] {
  const rings = [cut.shape.outer, ...cut.shape.holes];
  const slants = rings.flatMap((ring) =>
    ring.flatMap((a, i) => {
      const b = ring[(i + 1) % ring.length]!;
      const isLevel = Math.abs(b[1] - a[1]) <= LEVEL * Math.abs(b[0] - a[0]);
      return isLevel ? [] : [[Math.min(a[0], b[0]), Math.max(a[0], b[0])] as const];
    }),
  );
  const round = cut.circles.map(({ centre: [x], radius }) => [x - radius, x + radius] as const);
  const ends = [...rings.flat(), ...cut.sizes.flatMap(({ at }) => at)].map(([x]) => [x, x] as const);
  const taken = [...slants, ...round, ...ends, [tile.length, tile.length] as const].sort(
    (a, b) => a[0] - b[0],
  );
  let [best, reached]: [readonly [Ticks, Ticks], Ticks] = [[0, 0], 0];
  for (const [from, to] of taken) {
    const next = Math.min(from, tile.length);
    if (next - reached > best[1] - best[0]) best = [reached, next];
    reached = Math.max(reached, to);
  }
  return best;
}
