import type { Point } from '../../src/geometry/index.ts';

/** What a wall makes of a tile: whether the cut is thin, what it lacks of half a tile, and its share of one. */
export interface JudgedCut {
  readonly thin: boolean;
  readonly lacks: number;
  readonly share: number;
}

/** The worst of the cuts at a point of a wall where the pattern may stand so many ticks off either way; undefined where none is cut. */
export function worstCut(
  inward: Point,
  origin: Point,
  off: number,
  cutFrom: (origin: Point) => JudgedCut | undefined,
): JudgedCut | undefined {
  const cuts = [-off, 0, off].flatMap(
    (by) => cutFrom([origin[0] + by * inward[0], origin[1] + by * inward[1]]) ?? [],
  );
  if (cuts.length === 0) return undefined;
  return {
    thin: cuts.some(({ thin }) => thin),
    lacks: Math.max(...cuts.map(({ lacks }) => lacks)),
    share: Math.min(...cuts.map(({ share }) => share)),
  };
}
