import type { Ticks } from '../measure/index.ts';
import type { Cell, Sized } from './Cell.ts';
import { onCells } from './onCells.ts';
import type { Pattern } from './Pattern.ts';

/**
 * Basketweave: `group` tiles side by side fill a square, and squares of lying and standing tiles alternate.
 * All joints are alike where the length is that of `group` widths and the joints between them.
 *
 * @example basketweave({ key: 'field', length: 610, width: 300 }, 10).a //=> [1240, 0]
 * @example basketweave({ key: 'field', length: 600, width: 300 }, 10).closing.needs //=> 610
 */
export function basketweave(tile: Sized, joint: Ticks, group = 2): Pattern {
  const [long, short] = [Math.max(tile.length, tile.width), Math.min(tile.length, tile.width)];
  const square = Math.max(long + joint, group * (short + joint));
  const cuts = Array.from({ length: group + 1 }, (_, k) => Math.round((square * k) / group));
  const cells = (stands: boolean) =>
    cuts.slice(0, -1).map((from, k): Cell => {
      const across = cuts[k + 1]! - from;
      return stands
        ? { tile, at: [square + from, 0], size: [across, square] }
        : { tile, at: [0, from], size: [square, across] };
    });
  return onCells({
    name: 'basketweave',
    a: [2 * square, 0],
    b: [square, square],
    cells: [...cells(false), ...cells(true)],
    joint,
    step: [square / group, square / group],
    module: [square, square],
    straight: true,
  });
}
