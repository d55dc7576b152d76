import type { Piece } from '../layout/Layout.ts';

/** The pieces of the field between two straight joints, or those that a line across such courses meets, and the place of the line through them. */
export interface Course {
  readonly axis: 'along' | 'across';
  readonly name: string;
  /** Half a tick off the whole ticks, so that the line meets no corner. */
  readonly level: number;
  readonly pieces: readonly Piece[];
}
