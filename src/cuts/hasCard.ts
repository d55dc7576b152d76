import type { Cut } from './Cut.ts';

/**
 * Whether a cut is drawn on a card and as a template: a hard one, or a point with more than one sawn edge, two of whose sizes
 * would else stand on one line for the same edge of the tile.
 */
export function hasCard(cut: Cut): boolean {
  return cut.hard || (cut.kind === 'point' && cut.edges.filter(({ factory }) => !factory).length > 1);
}
