import type { RoomEdge } from './Room.ts';

/**
 * Whether what lies in the floor is the joint along a fold, where tile meets tile: nothing stands there.
 *
 * @example isFold({ edges: [] }) //=> false
 */
export function isFold({ edges }: { readonly edges: readonly Pick<RoomEdge, 'meets'>[] }): boolean {
  return edges.some(({ meets }) => meets === 'fold');
}
