import { bounds } from '../../geometry/index.ts';
import type { SurfaceSpec } from '../../job/Job.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import { TAPER_SHOWS } from '../../trade/index.ts';
import type { Ground } from '../frame/Ground.ts';
import type { LaidPiece } from '../pieces/LaidPiece.ts';
import { cutsAlong } from './cutsAlong.ts';
import type { Tapers } from './Tapers.ts';
import { taperAdvice } from './taperAdvice.ts';
import { taperOf } from './taperOf.ts';
import { taperWays } from './taperWays.ts';
import { wallLines } from './wallLines.ts';

/** How each wall runs against the pattern as it is laid, which ways there are to lay it instead, and what hides the tapers that show. */
export function makeTapers(
  ground: Ground,
  pattern: Pattern,
  border: readonly LaidPiece[],
  surface: Pick<SurfaceSpec, 'pattern' | 'taperShows' | 'focalWeight'>,
): Tapers {
  const { along, turnedDeg } = surface.pattern;
  const { taperShows = TAPER_SHOWS.value.ofCutShare, focalWeight = TAPER_SHOWS.value.focalWeight } = surface;
  const box = bounds(pattern.tiles[0]!.ring);
  const size = [box.maxX - box.minX, box.maxY - box.minY] as const;
  const shared = typeof along !== 'string' && along.kind === 'shared' ? along : undefined;
  // As the direction was reckoned, where it was.
  const lines = wallLines(ground, shared?.least ?? Math.min(...size));
  const walls = lines.map((line) =>
    taperOf(line, size[line.axis], cutsAlong(line, border, ground), taperShows),
  );
  const ways = taperWays(lines, focalWeight);
  const room = lines.map(({ axis }) => size[1 - axis]!);
  return { obeyed: along, turnedDeg, walls, ways, advice: taperAdvice(walls, room, ways, taperShows) };
}
