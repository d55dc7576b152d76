import type { SurfaceSpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import { spread } from '../measure/index.ts';
import type { Complain } from './complainer.ts';
import { mostSpread } from './misclosureLimit.ts';
import { type CornerDistance, distances, type Observation, observations, readingSd } from './observations.ts';

const isCheck = (one: Observation): one is CornerDistance => one.kind === 'cornerCheck';

/** Marks beyond the ends of the walls they are made on. */
function longLegs(surface: SurfaceSpec, check: CornerDistance, complain: Complain): Problem[] {
  const walls = distances(surface).slice(0, surface.walls.length);
  const n = walls.length;
  const pairs = [
    [check.before, walls[(check.corner + n - 1) % n]!],
    [check.after, walls[check.corner]!],
  ] as const;
  return pairs
    .filter(([leg, wall]) => leg > wall.mean + 2 * readingSd)
    .map(([leg, wall]) => {
      const figures = { corner: check.id, wall: wall.id, length: complain.text(wall.mean) };
      return complain('cornerLegTooLong', ['corner checks', check.id], complain.text(leg), figures);
    });
}

/** Three sides that make no triangle, or a reading that is missing, nothing, or not of one distance. */
function oddCheck(check: CornerDistance, complain: Complain): Problem[] {
  const path = ['corner checks', check.id];
  const { before, after, mean, read, id } = check;
  if (read.length === 0) return [complain('noReading', path, id)];
  const nothing = [before, after, ...read].find((one) => !(one > 0));
  if (nothing !== undefined) return [complain('zeroLength', path, complain.text(nothing), { id })];
  const apart = spread(read);
  if (apart > mostSpread)
    return [
      complain('readingsDisagree', path, complain.text(apart), { id, limit: complain.text(mostSpread) }),
    ];
  const [least, most] = [Math.abs(before - after), before + after];
  if (mean > least && mean < most) return [];
  const figures = { corner: id, least: complain.text(least), most: complain.text(most) };
  return [complain('cornerCheckReach', path, complain.text(mean), figures)];
}

/** What is wrong with corner checks and with what was read from a base line. */
export function checkProblems(surface: SurfaceSpec, complain: Complain): Problem[] {
  const seen = observations(surface);
  const names = surface.corners.map(({ name }) => name).join(', ');
  const nowhere = seen
    .filter((one) => (isCheck(one) || (one.kind === 'baseLine' && one.axis === 'along')) && one.corner < 0)
    .map((one) => {
      const name = one.id.replace(/:along$/, '');
      const key = one.kind === 'cornerCheck' ? 'corner checks' : 'base line';
      return complain('unknownCorner', [key, name], name, { name, corners: names });
    });
  const checks = seen.filter(isCheck).filter(({ corner }) => corner >= 0);
  const lone = surface.baseLine.length === 1 ? surface.baseLine : [];
  return [
    ...nowhere,
    ...checks.flatMap((check) => {
      const odd = oddCheck(check, complain);
      return odd.length > 0 ? odd : longLegs(surface, check, complain);
    }),
    ...lone.map(({ corner }) => complain('baseLineOfOne', ['base line', corner], corner, { corner })),
  ];
}
