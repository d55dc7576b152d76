import type { SurfaceSpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import { spread } from '../measure/index.ts';
import { checkProblems } from './checkProblems.ts';
import type { Complain } from './complainer.ts';
import { exchangedWalls } from './exchangedWalls.ts';
import { mostSpread } from './misclosureLimit.ts';
import { type Distance, distances, readingSd } from './observations.ts';

const key = ({ kind }: Distance) => (kind === 'wall' ? 'walls' : 'diagonals');

/** Walls that do not go once round from corner to corner, and readings that are missing or nothing. */
function oddReadings(surface: SurfaceSpec, seen: readonly Distance[], complain: Complain): Problem[] {
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

/** Sets of three readings that join three corners. */
function triangles(seen: readonly Distance[]): Distance[][] {
  const ends = ({ from, to }: Distance) => [Math.min(from, to), Math.max(from, to)] as const;
  return seen.flatMap((one) =>
    seen.flatMap((other) => {
      const [[a, b], [c, d]] = [ends(one), ends(other)];
      // Of corners a < b < d, one joins a to b and the other b to d, so that each set comes up once.
      if (b !== c) return [];
      return seen
        .filter((third) => ends(third)[0] === a && ends(third)[1] === d)
        .map((third) => [one, other, third]);
    }),
  );
}

/** Three distances of which one is longer than the other two together. */
function impossibleTriangles(seen: readonly Distance[], complain: Complain): Problem[] {
  return triangles(seen).flatMap((sides) => {
    const [p, q, longest] = sides.sort((x, y) => x.mean - y.mean) as [Distance, Distance, Distance];
    const over = longest.mean - p.mean - q.mean;
    // Three corners in a line may read a little long or short.
    if (over <= 2 * readingSd) return [];
    const figures = {
      id: longest.id,
      others: `${p.id}, ${q.id}`,
      sum: complain.text(p.mean + q.mean),
      over: complain.text(over),
    };
    return [complain('triangle', [key(longest), longest.id], complain.text(longest.mean), figures)];
  });
}

/** Impossible triangles, or the two walls that make them when each bears the other's reading. */
function brokenTriangles(surface: SurfaceSpec, used: readonly Distance[], complain: Complain): Problem[] {
  const impossible = impossibleTriangles(used, complain);
  const pairs = impossible.length > 0 ? exchangedWalls(surface, Number.POSITIVE_INFINITY) : [];
  if (pairs.length === 0) return impossible;
  const name = (i: number) => surface.walls[i % surface.walls.length]!.id;
  const all = pairs.map((i) => `${name(i)} – ${name(i + 1)}`).join(', ');
  return [complain('exchanged', ['walls', name(pairs[0]!)], all, { id: impossible[0]!.figures.id ?? '' })];
}

/** What is wrong with the readings as such, before any room is made of them. */
export function readingProblems(surface: SurfaceSpec, complain: Complain): Problem[] {
  const seen = distances(surface);
  const odd = oddReadings(surface, seen, complain);
  if (odd.length > 0) return odd;
  const used = seen.filter(({ id }) => !surface.setAside.includes(id));
  return [...brokenTriangles(surface, used, complain), ...checkProblems(surface, complain)];
}
