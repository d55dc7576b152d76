import { makeCuts } from '../../../src/cuts/makeCuts.ts';
import type { Point } from '../../../src/geometry/index.ts';
import type { SurfaceSpec } from '../../../src/job/Job.ts';
import { groundOf } from '../../../src/layout/groundOf.ts';
import type { Layout } from '../../../src/layout/Layout.ts';
import { layAnother } from '../../../src/layout/layAnother.ts';
import { makeLayout } from '../../../src/layout/makeLayout.ts';
import { makeCurve } from '../../../src/packet/makeCurve.ts';
import { makeRoom } from '../../../src/room/makeRoom.ts';
import { makeTilePlans } from '../../../src/tiles/makeTilePlans.ts';
import { familyRoom } from '../../tiles/support/familyRoom.ts';

export type Look = (surface: SurfaceSpec) => SurfaceSpec;

/**
 * A room of a family with walls up to 9 ft, as it is or looked at otherwise: a rectangle, with a corner less, with a column, each second out
 * of square; its curve, and how it is laid and planned from any other start.
 */
export function curveRoom(family: string, seed: number, looked: Look = (surface) => surface) {
  const { job: any, surface: plain } = familyRoom(family, seed, 108);
  const job = { ...any, status: 'planned' as const };
  const surface = looked(plain);
  const made = makeRoom(surface, job.print.system);
  if ('problems' in made) throw new Error('a random room is a room');
  const { room } = made;
  const layout = makeLayout(job, surface, room);
  if ('problems' in layout) throw new Error('a random room can be laid');
  const laidAt = (origin: Point): Layout =>
    layAnother(layout, surface, room, job.print.step, { ...layout.start.chosen, origin });
  const curve = makeCurve(job, { surface, room, layout, cuts: makeCuts(job, layout) });
  const ground = groundOf(layout, surface, room, job.print.step);
  const plan = (laid: Layout) => makeTilePlans(job, [laid], [makeCuts(job, laid)]).field!;
  return { seed, job, layout, ground, laidAt, curve, plan };
}
