import type { Point } from '../geometry/index.ts';
import { sawDown, sawNearest, sawUp, type Ticks } from '../measure/index.ts';
import type { CutSize } from './Cut.ts';
import type { TileSide } from './Outline.ts';
import type { TileBox } from './TileBox.ts';

/** Equal cuts may differ by a tick where their ends were rounded; without this they would fall on two sides of a mark. */
const SLACK: Ticks = 2;

/** What is kept: the largest mark that is not over it. */
export const keepSaw = (exact: Ticks, step: Ticks): Ticks => sawDown(exact + SLACK, step);

/** What is taken away: the smallest mark that is not under it. */
export const takeSaw = (exact: Ticks, step: Ticks): Ticks => sawUp(exact - SLACK, step);

/** A coordinate to be marked on a whole tile. */
export interface Marking {
  readonly what: string;
  readonly from: TileSide;
  readonly at: Point;
  /** Way in which tile is taken away there: to the right or up 1, to the left or down -1; 0 for a centre. */
  readonly away: number;
}

/**
 * The size from a side of the tile to a point: it rounds so that the piece only gets smaller, a centre to the nearest mark.
 *
 * @example measureFrom({ what: 'length', from: 'left', at: [62000, 0], away: 1 }, { length: 96000, width: 96000 }, 508) //=> { what: 'length', from: 'left', exact: 62000, saw: 61976, at: [[0, 0], [62000, 0]] }
 * @example measureFrom({ what: 'notchWidth', from: 'right', at: [62000, 0], away: 1 }, { length: 96000, width: 96000 }, 508).saw //=> 34036
 */
export function measureFrom(marking: Marking, box: TileBox, step: Ticks): CutSize {
  const { what, from, at, away } = marking;
  const [x, y] = at;
  const start: Point =
    from === 'left'
      ? [0, y]
      : from === 'right'
        ? [box.length, y]
        : from === 'bottom'
          ? [x, 0]
          : [x, box.width];
  const exact =
    from === 'left' ? x : from === 'right' ? box.length - x : from === 'bottom' ? y : box.width - y;
  const grows = from === 'left' || from === 'bottom' ? away : 0 - away;
  const saw = grows > 0 ? keepSaw(exact, step) : grows < 0 ? takeSaw(exact, step) : sawNearest(exact, step);
  return { what, from, exact, saw, at: [start, at] };
}
