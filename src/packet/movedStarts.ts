import type { Point } from '../geometry/index.ts';
import type { Job } from '../job/Job.ts';
import type { CurveGround, CurveLaid } from '../layout/start/curve/CurveGround.ts';
import { spreadMoves } from '../layout/start/curve/spreadMoves.ts';
import { wallMoves } from '../layout/start/curve/wallMoves.ts';
import { sameStart } from '../layout/start/sameStart.ts';
import { leastRepeat } from '../layout/start/search/leastRepeat.ts';
import { wallDirections } from '../layout/start/search/wallDirections.ts';
import { countTilesFast } from '../tiles/countTiles.ts';
import { curveFronts, type OnCurve } from './curveFronts.ts';

/** A start that is laid, and how many tiles it takes at most. */
export interface FastCounted extends CurveLaid, OnCurve {}

/** Of the starts that may be laid, the part that may be moved for the walls of one direction only, and with those moved for both; the rest lies all over the repeat. */
const [SINGLES, MOVED] = [1 / 2, 5 / 6];
/** Places all over the repeat that are looked at for each that may be laid: at many, strips would be too thin. */
const LOOKS = 4;

/**
 * Starts for the curve where walls do not tell them course by course, as the pattern lies aslant or in no courses: what walls of one
 * direction let tiles share hardly depends on those of the other, so the pattern is first moved for each by itself and counted, then for
 * both, where the two counts together promise most.
 */
export function movedStarts(job: Job, on: CurveGround): readonly FastCounted[] {
  const { origin, pattern, free, kerf, most } = on;
  if (!free.some(Boolean)) return [];
  const { count, canStand, tried } = counting(job, on);
  const { lists, alike } = wallMoves(wallDirections(on.ground, pattern), {
    from: origin,
    free,
    kerf,
    repeat: leastRepeat(pattern),
  });
  const first = crossed(lists).find((by) => canStand(movedBy(origin, by)));
  const own = first && count(movedBy(origin, first));
  if (!own) return [];
  const each = Math.floor((most * SINGLES) / Math.max(1, lists.length));
  const single = lists.map((list, k) => {
    const saving: { by: Point; saves: number }[] = [];
    for (const by of list) {
      if (saving.length === each) break;
      const counted = count(movedBy(origin, first.with(k, by)));
      if (counted) saving.push({ by: from(own, counted), saves: own.atMost - counted.atMost });
    }
    return saving;
  });
  const offers = crossed(single).flatMap((moves) => {
    const atMost = moves.reduce((left, { saves }) => left - saves, own.atMost);
    return alike.flatMap((by) => {
      const at = movedBy(own.candidate.origin, [...moves.map((one) => one.by), by]);
      const walls = on.wallsAt(at);
      return walls ? [{ at, atMost, share: walls.narrowest }] : [];
    });
  });
  const best = curveFronts(offers).flat();
  for (const { at } of best.slice(0, Math.ceil(MOVED * most) - tried().length)) count(at);
  for (const by of spreadMoves(leastRepeat(pattern), free, LOOKS * most)) {
    if (tried().length >= most) break;
    count(movedBy(origin, [by]));
  }
  return tried();
}

/** Lays and counts starts, each once, where it can stand: as it is, or a little beside that where a job file can name it. */
function counting(job: Job, { pattern, wallsAt, named, lay }: CurveGround) {
  const repeat = leastRepeat(pattern);
  const known: FastCounted[] = [];
  const placed = (wanted: Point) => {
    for (const name of named ? named(wanted) : [undefined]) {
      const at = name?.origin ?? wanted;
      const walls = wallsAt(at);
      if (walls) return { at, walls, name };
    }
    return undefined;
  };
  const count = (wanted: Point): FastCounted | undefined => {
    const place = placed(wanted);
    if (!place) return undefined;
    const { at, walls, name } = place;
    const before = known.find(({ candidate }) => sameStart(candidate.origin, at, repeat));
    if (before) return before;
    const counted = fastCounted(job, lay(at, walls, name));
    known.push(counted);
    return counted;
  };
  return { count, canStand: (at: Point) => placed(at) !== undefined, tried: () => known };
}

/** A start with the tiles that it takes at most. */
export function fastCounted(job: Job, { candidate, laid }: CurveLaid): FastCounted {
  return { candidate, laid, share: candidate.smallestShare, atMost: countTilesFast(job, laid) };
}

/** One of each list, all ways: those with the most that come first in their lists before others. */
function crossed<One>(lists: readonly (readonly One[])[]): One[][] {
  const all = lists.reduce<{ of: One[]; rank: number }[]>(
    (some, list) =>
      some.flatMap(({ of, rank }) =>
        list.map((one, i) => ({ of: [...of, one], rank: rank + Number(i > 0) })),
      ),
    [{ of: [], rank: 0 }],
  );
  return all.sort((a, b) => a.rank - b.rank).map(({ of }) => of);
}

function movedBy([x, y]: Point, moves: readonly Point[]): Point {
  const [dx, dy] = [0, 1].map((axis) => moves.reduce((sum, by) => sum + by[axis]!, 0)) as [number, number];
  return [Math.round(x + dx) + 0, Math.round(y + dy) + 0];
}

function from({ candidate: one }: FastCounted, { candidate: other }: FastCounted): Point {
  return [other.origin[0] - one.origin[0], other.origin[1] - one.origin[1]];
}
