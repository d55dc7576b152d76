import type { PatternName, TileShape } from '../Job.ts';

/** A pattern as the job file names it, and the shapes of the tiles that it takes, in its own order. */
export interface PatternKey {
  readonly key: string;
  readonly name: PatternName;
  readonly shapes: readonly (TileShape['kind'] | 'rectangle')[];
  /** Tiles side by side that turn as one, where nobody says. */
  readonly group?: number;
}

/** Patterns that may stand alone in the job file, but for straight and running. */
export const PATTERN_KEYS: readonly PatternKey[] = [
  { key: 'herringbone', name: 'herringbone', shapes: ['rectangle'], group: 1 },
  { key: 'basketweave', name: 'basketweave', shapes: ['rectangle'], group: 2 },
  { key: 'two squares', name: 'twoSquares', shapes: ['rectangle', 'rectangle'] },
  { key: 'windmill', name: 'windmill', shapes: ['rectangle', 'rectangle'] },
  { key: 'three sizes', name: 'threeSizes', shapes: ['rectangle', 'rectangle', 'rectangle'] },
  { key: 'four sizes', name: 'fourSizes', shapes: ['rectangle', 'rectangle', 'rectangle', 'rectangle'] },
  { key: 'hexagon', name: 'hexagon', shapes: ['hexagon'] },
  { key: 'octagon and dot', name: 'octagonAndDot', shapes: ['octagon', 'rectangle'] },
  { key: 'rhombus', name: 'rhombus', shapes: ['rhombus'] },
  { key: 'chevron', name: 'chevron', shapes: ['chevron', 'chevron'] },
  { key: 'penny round', name: 'pennyRound', shapes: ['round'] },
];
