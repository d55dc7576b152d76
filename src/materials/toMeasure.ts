import { heightKind } from '../job/heightKind.ts';
import type { DoorwaySpec, HeightSpec, Job } from '../job/Job.ts';
import type { ToMeasure } from './Heights.ts';

/**
 * Heights that the job does not tell and that tile will change: the floor beyond each doorway and the door in it, each
 * flange and each drain, each appliance that comes out. A height is of a doorway or a drain when it bears its name, or when there is only
 * one of each.
 */
export function toMeasure(job: Pick<Job, 'base' | 'surfaces'>): readonly ToMeasure[] {
  const { heights, comesOut } = job.base;
  const doorways = job.surfaces.flatMap((surface) => surface.doorways);
  const obstacles = job.surfaces.flatMap((surface) => surface.obstacles);
  const flanges = obstacles.filter(({ meets }) => meets === 'flange');
  const drains = obstacles.filter(({ meets }) => meets === 'drain');
  const drained = heights.some(({ name }) => /\bdrain\b/i.test(name));
  const of = (kind: HeightSpec['kind']) => heights.filter((height) => height.kind === kind);
  const unknown = (kind: 'floor' | 'door', all: readonly DoorwaySpec[]) =>
    all.filter(({ name }) => !isTold(name, all.length, of(kind)));
  const entry = (code: ToMeasure['code']) => (one: { readonly name: string }) => ({ name: one.name, code });
  return [
    ...(of('flange').length > 0 ? [] : flanges.map(entry('height.measure.flange'))),
    ...drains
      .filter(({ name }) => !(drained && drains.length === 1) && !isTold(name, drains.length + 1, heights))
      .map(entry('height.measure.drain')),
    ...unknown(
      'floor',
      doorways.filter(({ beyond }) => beyond !== 'later'),
    ).map(entry('height.measure.floor')),
    ...unknown('door', doorways).map(entry('height.measure.door')),
    ...comesOut
      .filter(({ what }) => heightKind(what) === 'appliance' && !isTold(what, 2, of('appliance')))
      .map(({ what }) => ({ name: what, code: 'height.measure.appliance' as const })),
  ];
}

function isTold(name: string, places: number, heights: readonly HeightSpec[]): boolean {
  if (places === 1 && heights.length === 1) return true;
  return heights.some((height) => height.name.toLowerCase().includes(name.toLowerCase()));
}
