import type { Cut } from '../cuts/Cut.ts';
import { bounds, type Point, type Ring } from '../geometry/index.ts';
import { narrowEnd } from '../layout/start/narrowEnd.ts';
import { sawDown, type Ticks } from '../measure/index.ts';

/** How deep a piece is as it is sawn, at its wide end and at its narrow one; the same where it is square. */
export interface SawnDepth {
  readonly wide: Ticks;
  readonly narrow: Ticks;
}

/** Sizes of a cut between two opposite sides, along the tile and across it. */
const WAYS = [
  ['length', 'bottomLength', 'topLength'],
  ['width', 'leftLength', 'rightLength'],
] as const;

/** Sizes of one piece are alike, to so many ticks of rounding. */
const ALIKE = 4;

/**
 * The depth of a piece in a line of sight as its cut has it on the saw list, so that both sheets tell one size; where the cut tells no size that
 * way, or the piece is of a layout that is only compared, as the same rounding makes it of the outline.
 *
 * @param way the line of sight, along an axis of the frame.
 * @param step the saw step in ticks.
 */
export function sawnDepth(ring: Ring, [x, y]: Point, step: Ticks, cut?: Pick<Cut, 'sizes'>): SawnDepth {
  const axis = Math.abs(x) >= Math.abs(y) ? 0 : 1;
  const { minX, minY, maxX, maxY } = bounds(ring);
  const wide = axis === 0 ? maxX - minX : maxY - minY;
  const sizes = WAYS.map((names) =>
    (cut?.sizes ?? []).filter(({ what }) => (names as readonly string[]).includes(what)),
  );
  const own = sizes.find((some) => some.some(({ exact }) => Math.abs(exact - wide) <= ALIKE));
  const saws =
    own?.map(({ saw }) => saw) ?? [wide, narrowEnd(ring, axis) ?? wide].map((one) => sawDown(one, step));
  return { wide: Math.max(...saws), narrow: Math.min(...saws) };
}
