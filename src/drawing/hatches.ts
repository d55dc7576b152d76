/** How an area is filled. Hatches lie on the paper: they don't turn with the tile. */
export type Fill = HatchName | 'none' | 'paper' | 'ink';

/** A tile of the fill's repeat in mm: its size, and lines and dots in it. */
export interface Hatch {
  readonly size: number;
  readonly turn: number;
  /** Line width in mm of the lines named. */
  readonly width: number;
  readonly lines: readonly ('along' | 'across')[];
  /** Diameter of a dot. */
  readonly dot?: number;
}

/** `cut` 45° lines, `hard` crossed lines, `hidden` dots, `wall` the close hatch of a wall's body. */
export const hatches = {
  cut: { size: 3, turn: 45, width: 0.18, lines: ['across'] },
  hard: { size: 3, turn: 45, width: 0.18, lines: ['along', 'across'] },
  hidden: { size: 2.5, turn: 0, width: 0, lines: [], dot: 0.35 },
  wall: { size: 1.2, turn: 45, width: 0.25, lines: ['across'] },
} as const satisfies Record<string, Hatch>;

export type HatchName = keyof typeof hatches;
