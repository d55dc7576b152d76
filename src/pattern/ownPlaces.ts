import type { Point } from '../geometry/index.ts';
import type { OwnRepeat } from '../job/Job.ts';
import type { Ticks } from '../measure/index.ts';
import type { Sized } from './Cell.ts';
import type { UnitPlace } from './onUnits.ts';

/**
 * The places of a pattern of the owner's own, each as many modules large as its tile comes nearest to; the
 * module is the smallest side of all its tiles with one joint.
 *
 * @example ownPlaces([{ key: 'field', length: 610, width: 300 }], 10, { repeat: [[2, 0], [0, 1]], places: [{ tile: 'field', at: [0, 0], stands: false }] })[0].size //=> [2, 1]
 */
export function ownPlaces(
  tiles: readonly Sized[],
  joint: Ticks,
  { places }: OwnRepeat,
): readonly UnitPlace[] {
  const module = Math.min(...tiles.flatMap(({ length, width }) => [length, width])) + joint;
  const count = (side: Ticks) => Math.max(1, Math.round((side + joint) / module));
  return places.map(({ tile: key, at, stands }) => {
    const tile = tiles.find((one) => one.key === key)!;
    const [long, short] = [Math.max(tile.length, tile.width), Math.min(tile.length, tile.width)].map(count);
    const size: Point = stands ? [short!, long!] : [long!, short!];
    return { tile, at, size };
  });
}
