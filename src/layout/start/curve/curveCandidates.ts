import type { Point } from '../../../geometry/index.ts';
import type { Face } from '../../frame/Face.ts';
import type { WallScore } from '../../WallScore.ts';
import { AXES } from '../Choice.ts';
import { sameStart } from '../sameStart.ts';
import type { CurveGround, CurveLaid } from './CurveGround.ts';
import { type CurveAxis, curvePlaces, placesBeside } from './curvePlaces.ts';

/**
 * Starts at which the number of tiles may change, beside the chosen one: where a cut becomes half a tile less half the kerf, so that
 * one tile gives two, or a whole tile, or what another cut leaves. None that has more strips along the walls in sight; each laid.
 * For patterns along the walls.
 */
export function curveCandidates({
  ground,
  pattern,
  origin,
  kerf,
  set,
  free,
  most,
  wallsAt,
  lay,
}: CurveGround): CurveLaid[] {
  const axes = ([0, 1] as const).map((axis): CurveAxis => {
    const { lowFace, highFace } = set.ends[AXES[axis]];
    const absent = [lowFace, highFace].map((face) => absentAt(ground.faces[face]!, pattern.joint));
    return { runs: set.ends, pattern, axis, kerf, absent: absent as [number, number] };
  });
  const own = axes.map((one, i) => (free[i] ? [origin[i]!, ...curvePlaces(one)] : [origin[i]!]));
  const pairs: Point[] = own[0]!.flatMap((x) => [
    ...own[1]!.map((y): Point => [x, y]),
    ...(free[1] ? placesBeside(axes[1]!, x) : []).map((y): Point => [x, y]),
  ]);
  const turned: Point[] = free[0]
    ? own[1]!.flatMap((y) => placesBeside(axes[0]!, y).map((x): Point => [x, y]))
    : [];
  const kept: { at: Point; walls: WallScore }[] = [];
  for (const at of [...pairs, ...turned]) {
    const walls = wallsAt(at);
    if (walls && !kept.some((one) => sameStart(one.at, at, pattern))) kept.push({ at, walls });
  }
  kept.sort((a, b) => b.walls.narrowest - a.walls.narrowest);
  return kept.slice(0, most).map(({ at, walls }) => lay(at, walls));
}

/** The widest strip that is left out as gap at a face. */
function absentAt({ gap, gapMax }: Face, joint: number): number {
  return Math.max(0, gapMax - gap - joint);
}
