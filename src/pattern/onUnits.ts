import type { Point } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { Cell, Sized } from './Cell.ts';
import { onCells } from './onCells.ts';
import type { Pattern } from './Pattern.ts';

/** A tile of a mix that is counted in units: lower left corner and extents, joint and all. */
export interface UnitPlace {
  readonly tile: Sized;
  readonly at: Point;
  readonly size: Point;
}

/** A mix of rectangles on one unit: every side is a whole number of units less one joint, else joints vary. */
export function onUnits(
  name: string,
  repeat: readonly [Point, Point],
  places: readonly UnitPlace[],
  joint: Ticks,
): Pattern {
  const unit = Math.max(...places.map((place) => unitFor(place, joint)));
  const inTicks = ([x, y]: Point): Point => [Math.round(x * unit), Math.round(y * unit)];
  return onCells({
    name,
    a: inTicks(repeat[0]),
    b: inTicks(repeat[1]),
    cells: places.map(({ tile, at, size }): Cell => ({ tile, at: inTicks(at), size: inTicks(size) })),
    joint,
    step: [unit, unit],
  });
}

/** The least unit in which a tile fits its place. */
function unitFor({ tile, size }: UnitPlace, joint: Ticks): Ticks {
  const [long, short] = [Math.max(...size), Math.min(...size)];
  const most = Math.max(tile.length, tile.width) + joint;
  const least = Math.min(tile.length, tile.width) + joint;
  return Math.ceil(Math.max(most / long, least / short));
}
