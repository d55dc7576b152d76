import type { Ticks } from '../measure/index.ts';
import type { Sized } from './Cell.ts';
import { onCells } from './onCells.ts';
import type { Pattern } from './Pattern.ts';

/**
 * Two squares (pinwheel): a small square at one corner of each large one. It closes with squares of any two sizes.
 *
 * @example twoSquares({ key: 'large', length: 590, width: 590 }, { key: 'small', length: 290, width: 290 }, 10).b //=> [-300, 600]
 */
export function twoSquares(large: Sized, small: Sized, joint: Ticks): Pattern {
  const [A, B] = [large, small].map(({ length, width }) => Math.max(length, width) + joint) as [Ticks, Ticks];
  return onCells({
    name: 'twoSquares',
    a: [A, B],
    b: [-B, A],
    cells: [
      { tile: large, at: [0, 0], size: [A, A] },
      { tile: small, at: [A, 0], size: [B, B] },
    ],
    joint,
    step: [Math.min(A, B), Math.min(A, B)],
  });
}
