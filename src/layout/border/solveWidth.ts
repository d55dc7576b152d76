import type { Ticks } from '../../measure/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { Solved } from './Border.ts';
import type { FacingSides } from './facingSides.ts';
import { repeatAlong } from './repeatAlong.ts';

/** What a course whose width is open may be. */
export interface OpenWidth {
  /** The two walls that are longest side by side. */
  readonly facing: FacingSides;
  readonly pattern: Pattern;
  /** The tile's width: the most. */
  readonly most: Ticks;
  /** Thinner than this it is a strip. */
  readonly least: Ticks;
  /** What all other courses take with their joints on each side. */
  readonly others: Ticks;
  readonly step: Ticks;
}

/**
 * The widest a course may be so that the pattern ends alike along both walls: on whole or half tiles, on half tiles, or at least as it
 * ends on the other side. Half tiles may be a saw step short, so that one tile gives two with its kerf. The tile's own width where
 * none does.
 */
export function solveWidth(open: OpenWidth): { readonly width: Ticks; readonly solved: Solved } {
  const { facing, pattern, most, least, others, step } = open;
  const { joint } = pattern;
  const walls = facing.walls;
  const period = repeatAlong(pattern, facing.across);
  // From border to border within their joints, were the course of no width.
  const free = facing.run - 2 * others - 2 * joint;
  const none = { width: most, solved: { ends: 'none', walls, run: free - 2 * most, repeats: 0 } as const };
  if (!period) return none;
  const spare = period.ends === 'whole' ? joint : 0;
  const repeats = Math.ceil((free - 2 * most + spare) / period.length);
  const exact = (free - repeats * period.length + spare) / 2;
  if (exact < least) return none;
  const sawn = Math.ceil(exact / step - 1e-9) * step;
  const width = period.ends === 'whole' || sawn > most ? Math.round(exact) : sawn;
  return { width, solved: { ends: period.ends, walls, run: Math.round(free - 2 * width), repeats } };
}
