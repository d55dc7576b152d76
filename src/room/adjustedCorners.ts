import type { Point } from '../geometry/index.ts';
import type { SurfaceSpec } from '../job/Job.ts';
import type { Covariance } from './freeCovariance.ts';
import type { AdjustedCorner } from './Room.ts';

/** A corner further from square than this is not meant to be square. Common practice, no source. */
const mostFromSquareDeg = 15;

const lengthOf = (a: Point, b: Point) => Math.hypot(b[0] - a[0], b[1] - a[1]);

/** Inner angle at a corner, the room on the left. */
function innerAngleDeg(before: Point, at: Point, after: Point): number {
  const back = Math.atan2(before[1] - at[1], before[0] - at[0]);
  const on = Math.atan2(after[1] - at[1], after[0] - at[0]);
  return (((back - on) * 180) / Math.PI + 360) % 360;
}

/** How far the shorter wall of a corner leans from square to the longer one; null at corners that are not meant to be square. */
function leanAt(surface: SurfaceSpec, corners: readonly Point[], i: number, angleDeg: number) {
  const n = corners.length;
  const square = angleDeg < 180 ? 90 : 270;
  const off = angleDeg - square;
  if (Math.abs(off) > mostFromSquareDeg) return null;
  const walls = [(i + n - 1) % n, i].map((k) => ({
    wall: surface.walls[k]!.id,
    length: lengthOf(corners[k]!, corners[(k + 1) % n]!),
  })) as [Side, Side];
  const { wall, length } = walls[0].length < walls[1].length ? walls[0] : walls[1];
  const by = Math.round(length * Math.sin((off * Math.PI) / 180)) + 0;
  return { wall, by, over: Math.round(length) };
}

interface Side {
  readonly wall: string;
  readonly length: number;
}

/** The corners' angles, how far each may be out, and how far its walls lean. Where nothing tells, `covariance` is undefined. */
export function adjustedCorners(
  surface: SurfaceSpec,
  corners: readonly Point[],
  covariance: Covariance | undefined,
): AdjustedCorner[] {
  const n = corners.length;
  return surface.corners.map(({ name }, i) => {
    const angleDeg = innerAngleDeg(corners[(i + n - 1) % n]!, corners[i]!, corners[(i + 1) % n]!);
    const square = covariance && covariance[2 * i]![2 * i]! + covariance[2 * i + 1]![2 * i + 1]!;
    return {
      name,
      angleDeg: Math.round(angleDeg * 1e6) / 1e6,
      sd: square === undefined ? null : Math.round(Math.sqrt(square)),
      lean: leanAt(surface, corners, i, angleDeg),
    };
  });
}
