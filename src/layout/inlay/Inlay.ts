import type { Ring } from '../../geometry/index.ts';

/** A rectangle in the field that has its own tile and pattern, in the pattern's frame of the floor. */
export interface Inlay {
  readonly name: string;
  /** Its edge, counter-clockwise: tile of the inlay ends here, that of the field a joint outside. */
  readonly ring: Ring;
  /** Name of its pattern, and the keys of its tiles, those of its courses too. */
  readonly pattern: string;
  readonly tiles: readonly string[];
}
