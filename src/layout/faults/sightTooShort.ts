import { distancePoints } from '../../geometry/index.ts';
import type { SurfaceSpec } from '../../job/Job.ts';
import type { Problem } from '../../job/Problem.ts';
import { printLength, type System } from '../../measure/index.ts';
import type { Room } from '../../room/Room.ts';
import { leastApart } from '../chalk/chalkLine.ts';
import { placeNamed } from '../frame/placeNamed.ts';

/** A problem for each pattern, of the floor or of an inlay, that follows a line too short to give it a direction. */
export function sightTooShort(surface: SurfaceSpec, room: Room, system: System): Problem[] {
  const { name, pattern, inlays = [] } = surface;
  const least = leastApart(system);
  return [
    { path: [name, 'pattern', 'along'], along: pattern.along },
    ...inlays.map((inlay) => ({
      path: [name, 'inlays', inlay.name, 'pattern', 'along'],
      along: inlay.pattern.along,
    })),
  ].flatMap(({ path, along }) => {
    if (typeof along === 'string' || along.kind !== 'sight') return [];
    const { from, to } = along;
    const apart = distancePoints(placeNamed(room, from), placeNamed(room, to));
    if (apart >= least) return [];
    const figures = {
      from,
      to,
      apart: printLength(Math.round(apart), system),
      least: printLength(least, system),
    };
    return [{ code: 'lineTooShort', path, found: `from ${from} to ${to}`, figures }];
  });
}
