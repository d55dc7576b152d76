import type { Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';

/** Equal cuts at both ends of a run, none under half a tile; may be set aside with the owner's agreement. */
export const BALANCE: Fact<number> = { value: 0.5, mark: 'S', source: 'ANSI A108.02 §4.3' };

/** The old rule for the same, which leaves the joints out. */
export const BALANCE_WITHOUT_JOINTS: Fact<'(wall − full tiles + one tile) ÷ 2'> = {
  value: '(wall − full tiles + one tile) ÷ 2',
  mark: 'H',
  source: 'NAVEDTRA 14044 p. 7-23',
};

export interface BalancedRun {
  /** Full tiles between the two cuts. */
  readonly full: number;
  /** Cuts at the low and the high end, in ticks; where they cannot be equal the low one is a tick larger. */
  readonly ends: readonly [Ticks, Ticks];
  /** What lies on the middle of the run. */
  readonly middle: 'joint' | 'tile';
}

/**
 * A run between two faces with equal cuts at both ends. `n` full tiles have `n + 1` joints. With a full tile between
 * them the cuts are more than (tile − joint) ÷ 2 and at most a tile.
 *
 * @example
 * balancedRun(1007872, 96012, 1524, 2032) //=> { full: 9, ends: [62230, 62230], middle: 'tile' }
 */
export function balancedRun(wall: Ticks, tile: Ticks, joint: Ticks, gap: Ticks): BalancedRun {
  const space = wall - 2 * gap - joint;
  const full = Math.max(0, Math.ceil((space - 2 * tile) / (tile + joint)));
  const both = space - full * (tile + joint);
  return { full, ends: [Math.ceil(both / 2), Math.floor(both / 2)], middle: full % 2 ? 'tile' : 'joint' };
}

/**
 * The end cut of the old rule without joints or gaps, in ticks, not rounded.
 *
 * @example
 * balanceWithoutJoints(772160, 48768) //=> 44704
 */
export function balanceWithoutJoints(wall: Ticks, tile: Ticks): number {
  return (wall - Math.floor(wall / tile) * tile + tile) / 2;
}
