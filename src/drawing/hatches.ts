/** How an area is filled. Hatches lie on the paper: they don't turn with the tile. */
export type Fill = HatchName | 'none' | 'paper' | 'ink';

/** Lines at 45°, level or upright, or dots, `apart` mm from each other. */
export interface Hatch {
  readonly apart: number;
  /** Width of the lines, or diameter of the dots, in mm. */
  readonly width: number;
  readonly of: readonly ('rising' | 'falling' | 'level' | 'upright' | 'dots')[];
  /** Lines are broken: so long, then so far apart, in mm. */
  readonly dash?: readonly [on: number, off: number];
}

/**
 * `cut` 45° lines, `hard` crossed lines, `hidden` dots, `wall` the close hatch of a wall's body. The tiles of a pattern after
 * its first have lines along the paper's edges or large dots, so that a cut hatch over them still shows; the lines are broken, as joints never are.
 */
export const hatches = {
  cut: { apart: 3, width: 0.18, of: ['rising'] },
  hard: { apart: 3, width: 0.18, of: ['rising', 'falling'] },
  hidden: { apart: 2.5, width: 0.35, of: ['dots'] },
  second: { apart: 1.8, width: 0.18, of: ['level'], dash: [3, 1.2] },
  third: { apart: 1.8, width: 0.18, of: ['upright'], dash: [3, 1.2] },
  fourth: { apart: 3, width: 0.7, of: ['dots'] },
  fifth: { apart: 3.4, width: 0.18, of: ['level'], dash: [3, 1.2] },
  sixth: { apart: 3.2, width: 0.18, of: ['upright'], dash: [3, 1.2] },
  wall: { apart: 1.2, width: 0.25, of: ['rising'] },
} as const satisfies Record<string, Hatch>;

export type HatchName = keyof typeof hatches;
