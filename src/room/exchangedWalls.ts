import type { SurfaceSpec } from '../job/Job.ts';
import { findSuspects, type Solver } from './findSuspects.ts';
import { fitReadings, usable, walkRound } from './fitRoom.ts';
import { misclosureLimit } from './misclosureLimit.ts';
import { distances, observations } from './observations.ts';
import { chiSquareLimit } from './quantiles.ts';
import { degreesOfFreedom, keptOf, squaresOf } from './slips.ts';

/** Walls that differ by fewer standard deviations than this are not looked at: to exchange them mends nothing. */
const different = 4;
/** Share of good rooms whose readings fit as badly as this or worse. */
const rare = 0.001;

/** The surface with the readings of a wall and the next one exchanged. */
function exchanged(surface: SurfaceSpec, i: number): SurfaceSpec {
  const { walls } = surface;
  const next = (i + 1) % walls.length;
  const read = (k: number) => walls[k === i ? next : k === next ? i : k]!.readings;
  return { ...surface, walls: walls.map((wall, k) => ({ ...wall, readings: read(k) })) };
}

/** Whether everything read of a surface agrees, with nothing suspect in it. */
function agrees(surface: SurfaceSpec, before: number): boolean {
  const seen = usable(surface, observations(surface));
  const walls = distances(surface).slice(0, surface.walls.length);
  const walk = walkRound(
    surface,
    walls.map(({ mean }) => mean),
  );
  const solve: Solver = (some) => fitReadings(surface, some, walk);
  const solved = solve(seen);
  if (!solved) return false;
  const [kept, { kind }] = [keptOf(seen), surface.precision];
  const freedom = degreesOfFreedom(kept, solved);
  if (freedom < 1) return false;
  const squares = squaresOf(kept, solved);
  const good = kind === 'stated' ? squares <= chiSquareLimit(1 - rare, freedom) : squares < before / 25;
  return good && findSuspects(seen, surface.precision, solve).length === 0;
}

/** Whether walls alone close once two are exchanged. */
function closes(surface: SurfaceSpec): boolean {
  const lengths = distances(surface)
    .slice(0, surface.walls.length)
    .map(({ mean }) => mean);
  const perimeter = lengths.reduce((sum, one) => sum + one, 0);
  return walkRound(surface, lengths).misclosure <= misclosureLimit(perimeter);
}

/**
 * Walls, by number, whose readings make everything agree when they are exchanged with those of the next wall.
 * `squares` is the weighted sum of squared corrections as it is; undefined where the shape rests on the walk alone.
 */
export function exchangedWalls(surface: SurfaceSpec, squares: number | undefined): number[] {
  const { walls, precision } = surface;
  return walls.flatMap((wall, i) => {
    const next = walls[(i + 1) % walls.length]!;
    const apart = Math.abs(wall.readings[0]! - next.readings[0]!);
    if (apart < different * precision.sd || [wall.id, next.id].some((id) => surface.setAside.includes(id)))
      return [];
    const other = exchanged(surface, i);
    return (squares === undefined ? closes(other) : agrees(other, squares)) ? [i] : [];
  });
}
