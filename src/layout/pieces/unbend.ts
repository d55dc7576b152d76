import { circleRuns, type Point, type Ring, type Shape } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { Face } from '../frame/Face.ts';
import { onOneSide } from './sawnRuns.ts';

/** The circle along which tile ends before a curved wall, at its gap. */
export interface WallCurve {
  readonly centre: Point;
  readonly radius: Ticks;
}

/** The curves of those faces that are curved. */
export function wallCurves(faces: readonly Face[]): WallCurve[] {
  return faces.flatMap(({ curve, gap }) => {
    if (!curve) return [];
    const { centre, radius, sign } = curve.arc;
    return [{ centre, radius: radius - sign * gap }];
  });
}

/**
 * A piece at curved walls with straight cuts in place of their curves, and whether it is `curved` all the same: where it bends by no
 * more than `flat` ticks between its sides it is sawn straight.
 */
export function unbend(
  { outer, holes }: Shape,
  tile: Ring,
  curves: readonly WallCurve[],
  flat: number,
): { readonly shape: Shape; readonly curved: boolean } {
  if (curves.length === 0) return { shape: { outer, holes }, curved: false };
  const sawn = (a: Point, b: Point) => !onOneSide(tile, a, b);
  const n = outer.length;
  const runs = curves.flatMap((curve) => circleRuns(outer, curve, sawn));
  const dropped = new Set<number>();
  for (const { first, last } of runs)
    for (let i = (first + 1) % n; i !== last; i = (i + 1) % n) dropped.add(i);
  return {
    shape: dropped.size === 0 ? { outer, holes } : { outer: outer.filter((_, i) => !dropped.has(i)), holes },
    curved: runs.some(({ depth }) => depth > flat),
  };
}
