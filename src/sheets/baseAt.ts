import type { SheetContext } from './SheetContext.ts';

/** As many places are named on the job sheet; the base sheet has them all. */
const MOST = 3;

/** Where the base moves, its joints first, and which sheet shows it; none where nothing moves. */
export function baseAt({ packet: { base, surfaces }, say, longLength }: SheetContext): readonly string[] {
  const joints = surfaces.flatMap((surface) => surface.base?.joints ?? []);
  const places = [
    ...joints.map(({ distance, wall }) => say('gate.jointAt', { distance: longLength(distance), wall })),
    ...base.cracks.filter(({ moving }) => moving).map(({ where }) => where),
  ];
  if (places.length === 0) return [];
  const told = { places: places.slice(0, MOST).join(', '), more: places.length > MOST ? 'yes' : 'no' };
  return [say('gate.baseAt', told)];
}
