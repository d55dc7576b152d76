import type { WallDirection } from './WallReading.ts';

/** Whether walls of a direction lie slantwise to the pattern's own axes. */
export function liesAslant({ normal: [x, y] }: Pick<WallDirection, 'normal'>): boolean {
  return Math.min(Math.abs(x), Math.abs(y)) > 1e-6;
}
