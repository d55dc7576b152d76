import { offsetShapes, type Shape, simplified } from '../geometry/index.ts';
import type { Layout, Piece } from '../layout/Layout.ts';
import { PASSAGE } from '../trade/index.ts';

/** Dents, in ticks, that matter to nobody who passes: a two-hundredth of a passage. */
export const DENT = PASSAGE.value / 200;

/** The floor that laid pieces cover, joints and all: one shape, where hundreds of joints between them would only be in the way. */
export function tiledOver({ pattern }: Layout, pieces: readonly Piece[]): Shape[] {
  if (pieces.length === 0) return [];
  const by = Math.max(1, pattern.joint);
  const solid = pieces.map(({ shape }) => ({ outer: shape.outer, holes: [] }));
  return simplified(offsetShapes(solid, by, -by), DENT);
}
