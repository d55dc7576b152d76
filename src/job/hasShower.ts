import type { Job } from './Job.ts';

/** How a shower is called in the languages of the sheets, in which jobs are written too. */
const SHOWER = /shower|ducha|chuveiro/i;

/**
 * Whether the job tells of a shower in or beside the tile: a drain in the floor, a tub, or something that is called one. That a floor gets wet
 * is no shower yet.
 *
 * @example hasShower({ surfaces: [], base: { comesOut: [] } }) //=> false
 * @example hasShower({ surfaces: [], base: { comesOut: [{ what: 'shower door' }] } }) //=> true
 */
export function hasShower({
  surfaces,
  base,
}: {
  readonly surfaces: Job['surfaces'];
  readonly base: { readonly comesOut: readonly { readonly what: string }[] };
}): boolean {
  const edges = surfaces.flatMap(({ walls, obstacles }) => [...walls, ...obstacles]);
  const names = [
    ...surfaces.flatMap(({ name, obstacles, doorways }) => [
      name,
      ...[...obstacles, ...doorways].map((one) => one.name),
    ]),
    ...base.comesOut.map(({ what }) => what),
  ];
  return (
    edges.some(({ meets }) => meets === 'drain' || meets === 'tub') || names.some((one) => SHOWER.test(one))
  );
}
