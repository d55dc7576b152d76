import type { Point } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { Sized } from './Cell.ts';
import { onRows } from './onRows.ts';
import type { Pattern } from './Pattern.ts';
import { tileOutline } from './tileOutline.ts';

/**
 * Rhombi point to point in rows along x, side beside side, their joints slanting through both ways. The tile's
 * length and width are its diagonals.
 *
 * @example rhombus({ key: 'field', length: 800, width: 600 }, 10).a //=> [817, 0]
 */
export function rhombus({ key, length, width }: Sized, joint: Ticks): Pattern {
  const between = (length * width) / Math.hypot(length, width);
  const grown = (between + joint) / between;
  const ring = tileOutline({ length, width, shape: { kind: 'rhombus' } });
  const pitch: Point = [Math.round(length * grown), Math.round(width * grown)];
  return onRows('rhombus', key, ring, pitch, joint);
}
