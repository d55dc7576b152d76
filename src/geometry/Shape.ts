import type { Ring } from './Ring.ts';

/** A connected piece of the plane: what its outer ring holds, less its holes. */
export interface Shape {
  readonly outer: Ring;
  readonly holes: readonly Ring[];
}
