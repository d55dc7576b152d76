import type { Box } from '../boxes.ts';
import type { LaidCut } from './LaidCut.ts';
import type { PageGrid } from './pageGrid.ts';

/** Which part of a cut is shown at full size, and on which pages; mm from the lower left corner of the tile as it lies. */
export interface TemplatePlan {
  readonly laid: LaidCut;
  /** Whether it lies a quarter turn counter-clockwise from its card. */
  readonly turned: boolean;
  /** What is shown of the piece. */
  readonly part: Box;
  /** Sides at which the piece goes on. */
  readonly broken: readonly (keyof Box)[];
  readonly grid: PageGrid;
}
