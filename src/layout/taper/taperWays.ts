import { bestDirection, summedTaper, worstTaper } from './bestDirection.ts';
import type { TaperWay } from './Tapers.ts';
import type { WallLine } from './wallLines.ts';
import { weighed } from './weighed.ts';

/** Walls nearer in direction than this, in radians, are in line together: 1/32 in over 13 ft. */
const SAME = 2e-4;

/**
 * The directions that a pattern may take among these walls: as it lies, square to each wall, and the one that shares the taper;
 * the present one first, the others by their largest weighted taper.
 */
export function taperWays(lines: readonly WallLine[], focalWeight: number): TaperWay[] {
  const walls = weighed(lines, focalWeight);
  const distinct = (turns: readonly number[]) =>
    turns.filter((turn, i) => !turns.slice(0, i).some((other) => Math.abs(other - turn) <= SAME));
  const turns = distinct([0, ...lines.map(({ off }) => off), bestDirection(walls)]);
  const [now, ...others] = turns.map((turn, i): TaperWay => {
    const edges = lines.filter(({ off }) => Math.abs(off - turn) <= SAME).map(({ edge }) => edge);
    return {
      kind: i === 0 ? 'now' : edges.length > 0 ? 'obey' : 'share',
      edges,
      byDeg: (turn * 180) / Math.PI,
      worst: Math.round(worstTaper(walls, turn)),
      sum: Math.round(summedTaper(walls, turn)),
      runsOff: lines.map(({ off, length }) => Math.round(length * Math.abs(Math.sin(turn - off)))),
    };
  });
  return [now!, ...others.sort((a, b) => a.worst - b.worst || a.sum - b.sum)];
}
