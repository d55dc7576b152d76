import type { Point } from '../geometry/index.ts';
import type { Job } from '../job/Job.ts';
import { aslantMoves } from '../layout/start/curve/aslantMoves.ts';
import type { CurveGround, CurveLaid } from '../layout/start/curve/CurveGround.ts';
import { sameStart } from '../layout/start/sameStart.ts';
import { wallDirections } from '../layout/start/search/wallDirections.ts';
import { countTilesFast } from '../tiles/countTiles.ts';
import { curveFronts, type OnCurve } from './curveFronts.ts';

/** A start that is laid, and how many tiles it takes at most. */
export interface FastCounted extends CurveLaid, OnCurve {}

/** Of the starts that may be laid, the part that may be moved for the walls of one direction only; the rest is moved for both. */
const SINGLES = 1 / 2;

/**
 * Starts for the curve where the pattern lies aslant: what walls of one direction let tiles share hardly depends on those of the
 * other, so the pattern is first moved for each by itself and counted, then for both, where the two counts together promise most.
 */
export function aslantStarts(job: Job, on: CurveGround): readonly FastCounted[] {
  const { origin, pattern, free, kerf, most } = on;
  const { count, tried } = counting(job, on);
  const area = pattern.a[0] * pattern.b[1] - pattern.a[1] * pattern.b[0];
  const { lists, alike } = aslantMoves(wallDirections(on.ground, pattern), {
    from: origin,
    free,
    kerf,
    area,
  });
  const own = count(origin);
  if (!own) return [];
  const each = Math.floor((most * SINGLES) / lists.length);
  const single = lists.map((list) =>
    list.slice(0, each).flatMap((by) => {
      const counted = count(moved(origin, by));
      return counted ? [{ by, saves: own.atMost - counted.atMost }] : [];
    }),
  );
  const both = single.reduce(
    (all, list) =>
      all.flatMap(({ at, atMost }) =>
        list.map(({ by, saves }) => ({ at: moved(at, by), atMost: atMost - saves })),
      ),
    [{ at: origin, atMost: own.atMost }],
  );
  const offers = both.flatMap(({ at, atMost }) =>
    alike.flatMap((by) => {
      const walls = on.wallsAt(moved(at, by));
      return walls ? [{ at: moved(at, by), atMost, share: walls.narrowest }] : [];
    }),
  );
  const best = curveFronts(offers)
    .flat()
    .slice(0, most - tried().length);
  for (const { at } of best) count(at);
  return tried();
}

/** Lays and counts starts, each once. */
function counting(job: Job, { pattern, wallsAt, named, lay }: CurveGround) {
  const known: FastCounted[] = [];
  const count = (wanted: Point): FastCounted | undefined => {
    const at = named?.(wanted).origin ?? wanted;
    const before = known.find(({ candidate }) => sameStart(candidate.origin, at, pattern));
    const walls = wallsAt(at);
    if (before || !walls) return before;
    const counted = fastCounted(job, lay(at, walls));
    known.push(counted);
    return counted;
  };
  return { count, tried: () => known };
}

/** A start with the tiles that it takes at most. */
export function fastCounted(job: Job, { candidate, laid }: CurveLaid): FastCounted {
  return { candidate, laid, share: candidate.smallestShare, atMost: countTilesFast(job, laid) };
}

function moved([x, y]: Point, [dx, dy]: Point): Point {
  return [Math.round(x + dx) + 0, Math.round(y + dy) + 0];
}
