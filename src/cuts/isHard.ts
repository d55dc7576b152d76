import type { Cut, CutKind } from './Cut.ts';

/** Kinds that are hard to saw whatever their edges. */
const KINDS: ReadonlySet<CutKind> = new Set<CutKind>(['notch', 'u', 'hole', 'curve', 'odd']);

/**
 * The one definition of a hard cut, which is drawn on a card and as a template, hatched on plans and given a spare: a notch, a U, a
 * hole, a curve or an odd shape; or a point with more than one sawn edge, two of whose sizes would else stand on one line for the
 * same edge of the tile.
 */
export function isHard({ kind, edges }: Pick<Cut, 'kind' | 'edges'>): boolean {
  return KINDS.has(kind) || (kind === 'point' && edges.filter(({ factory }) => !factory).length > 1);
}
