import type { Cut, CutKind } from './Cut.ts';

const KINDS: ReadonlySet<CutKind> = new Set<CutKind>(['notch', 'u', 'hole', 'curve', 'odd']);

/**
 * Whether a cut goes into its tile: a notch, a U, a hole, a curve, or an odd shape, which has an inner corner. Such a piece breaks where
 * the cuts meet, so that it gets a spare; what is sawn right across, to however many points, has a share of the breakage and no more.
 *
 * @example isInsideCut({ kind: 'notch' }) //=> true
 * @example isInsideCut({ kind: 'point' }) //=> false
 */
export function isInsideCut({ kind }: Pick<Cut, 'kind'>): boolean {
  return KINDS.has(kind);
}
