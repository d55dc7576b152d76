import type { Ticks } from '../measure/index.ts';
import type { Sized } from './Cell.ts';
import { onCells } from './onCells.ts';
import type { Pattern } from './Pattern.ts';

/**
 * Windmill: four rectangles round one square. All joints are alike where the square is the rectangle's length
 * less its width and one joint.
 *
 * @example windmill({ key: 'long', length: 600, width: 300 }, { key: 'middle', length: 290, width: 290 }, 10).a //=> [920, 0]
 * @example windmill({ key: 'long', length: 600, width: 300 }, { key: 'middle', length: 270, width: 270 }, 10).closing.needs //=> 290
 */
export function windmill(long: Sized, middle: Sized, joint: Ticks): Pattern {
  const across = Math.min(long.length, long.width) + joint;
  const inside = Math.max(middle.length, middle.width) + joint;
  const along = Math.max(Math.max(long.length, long.width) + joint, inside + across);
  const side = along + across;
  const step = Math.min(across, along - across);
  return onCells({
    name: 'windmill',
    a: [side, 0],
    b: [0, side],
    cells: [
      { tile: long, at: [0, 0], size: [along, across] },
      { tile: long, at: [along, 0], size: [across, along] },
      { tile: long, at: [across, along], size: [along, across] },
      { tile: long, at: [0, across], size: [across, along] },
      { tile: middle, at: [across, across], size: [along - across, along - across] },
    ],
    joint,
    step: [step, step],
    module: [side, side],
    straight: true,
  });
}
