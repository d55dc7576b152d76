import type { SurfaceSpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import { spread } from '../measure/index.ts';
import type { Complain } from './complainer.ts';
import { mostSpread } from './misclosureLimit.ts';
import { distinctPairs, type Observation, observations, readingSd } from './observations.ts';

const key = ({ kind }: Observation) => (kind === 'wall' ? 'walls' : 'diagonals');

/** Walls that do not go once round from corner to corner, and readings that are missing or nothing. */
function oddReadings(surface: SurfaceSpec, seen: readonly Observation[], complain: Complain): Problem[] {
  const n = surface.corners.length;
  if (n < 3 || surface.walls.length !== n)
    return [complain('tooFewWalls', ['walls'], String(surface.walls.length))];
  return seen.flatMap((one, i) => {
    const path = [key(one), one.id];
    const goesOn = one.kind === 'diagonal' || (one.from === i && one.to === (i + 1) % n);
    if (one.from < 0 || one.to < 0 || one.from === one.to || !goesOn)
      return [complain('walkBroken', path, one.id)];
    if (one.read.length === 0) return [complain('noReading', path, one.id)];
    const nothing = one.read.find((reading) => !(reading > 0));
    if (nothing !== undefined) return [complain('zeroLength', path, complain.text(nothing), { id: one.id })];
    const apart = spread(one.read);
    if (apart <= mostSpread) return [];
    return [
      complain('readingsDisagree', path, complain.text(apart), {
        id: one.id,
        limit: complain.text(mostSpread),
      }),
    ];
  });
}

/** Three distances of which one is longer than the other two together. */
function impossibleTriangles(seen: readonly Observation[], complain: Complain): Problem[] {
  const between = new Map<string, Observation>();
  for (const one of seen) between.set(`${one.from} ${one.to}`, one).set(`${one.to} ${one.from}`, one);
  const corners = [...new Set(seen.flatMap(({ from, to }) => [from, to]))].sort((a, b) => a - b);
  const found: Problem[] = [];
  for (const a of corners)
    for (const b of corners)
      for (const c of corners) {
        const sides = [between.get(`${a} ${b}`), between.get(`${b} ${c}`), between.get(`${a} ${c}`)];
        if (!(a < b && b < c) || sides.includes(undefined)) continue;
        const [p, q, longest] = (sides as Observation[]).sort((x, y) => x.mean - y.mean);
        const over = longest!.mean - p!.mean - q!.mean;
        // Three corners in a line may read a little long or short.
        if (over <= 2 * readingSd) continue;
        const figures = {
          id: longest!.id,
          others: `${p!.id}, ${q!.id}`,
          sum: complain.text(p!.mean + q!.mean),
          over: complain.text(over),
        };
        found.push(complain('triangle', [key(longest!), longest!.id], complain.text(longest!.mean), figures));
      }
  return found;
}

/** What is wrong with the readings as such, before any room is made of them. */
export function readingProblems(surface: SurfaceSpec, complain: Complain): Problem[] {
  const seen = observations(surface);
  const odd = oddReadings(surface, seen, complain);
  return odd.length > 0 || distinctPairs(seen) < 3 ? odd : impossibleTriangles(seen, complain);
}
