import type { StartQuestion } from './StartQuestion.ts';

/** Starts laid and counted at most, and tiles at the field's edge laid for all of them together; but never fewer than a few. */
const MOST = 50;
const MOST_TILES = 5_000;
const FEW = 3;

/** How many starts can be laid in reasonable time: each costs about as much as the field's edge is long. */
export function affordable({
  ground,
  pattern: { module },
}: Pick<StartQuestion, 'ground' | 'pattern'>): number {
  const length = ground.edges.reduce(
    (sum, { from, to }) => sum + Math.hypot(to[0] - from[0], to[1] - from[1]),
    0,
  );
  const tiles = length / Math.min(module[0], module[1]);
  return Math.max(FEW, Math.min(MOST, Math.floor(MOST_TILES / tiles)));
}
