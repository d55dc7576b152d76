import type { Ticks } from '../measure/index.ts';
import type { Sized } from './Cell.ts';
import { onCells } from './onCells.ts';
import type { Pattern } from './Pattern.ts';

/**
 * Herringbone: tiles lie and stand by turns, each end against a side; `group` tiles side by side turn as one.
 * Its zigzags run at 45° to the tile, along the first repeat vector. It closes with tiles of any length.
 *
 * @example herringbone({ key: 'field', length: 590, width: 290 }, 10).a //=> [300, -300]
 * @example herringbone({ key: 'field', length: 590, width: 290 }, 10).b //=> [600, 600]
 */
export function herringbone(tile: Sized, joint: Ticks, group = 1): Pattern {
  const [long, short] = [
    Math.max(tile.length, tile.width) + joint,
    Math.min(tile.length, tile.width) + joint,
  ];
  const each = Array.from({ length: group }, (_, k) => short * k);
  return onCells({
    name: 'herringbone',
    a: [group * short, -group * short],
    b: [long, long],
    cells: [
      ...each.map((off) => ({ tile, at: [0, off] as const, size: [long, short] as const })),
      ...each.map((off) => ({ tile, at: [long + off, 0] as const, size: [short, long] as const })),
    ],
    joint,
    step: [short, short],
    cornersAlong: [1, -1],
  });
}
