import type { Chip } from './Job.ts';

/**
 * Face of a round chip or of a hexagon by what it reads across flats, in square ticks.
 *
 * @example
 * chipArea({ kind: 'round', across: 100 }).toFixed(1) //=> '7854.0'
 * chipArea({ kind: 'hexagon', across: 100 }).toFixed(1) //=> '8660.3'
 */
export function chipArea({ kind, across }: Chip): number {
  return across ** 2 * (kind === 'round' ? Math.PI / 4 : Math.sqrt(3) / 2);
}
