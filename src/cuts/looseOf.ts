import type { Piece } from '../layout/Layout.ts';
import type { Ticks } from '../measure/index.ts';

/** An edge of the room with its gap, and the largest gap that is still covered there. */
interface Gapped {
  readonly id: string;
  readonly gap: Ticks;
  readonly gapMax: Ticks;
}

/**
 * By how much a piece may end farther from all that cuts it: the least that one of their gaps has to spare. 0 where something else than an edge of
 * the room or of an obstacle cuts it.
 *
 * @example looseOf({ edges: ['A-B', 'B-C'] }, [{ id: 'A-B', gap: 6, gapMax: 12 }, { id: 'B-C', gap: 6, gapMax: 8 }]) //=> 2
 * @example looseOf({ edges: ['A-B', 'flange'] }, [{ id: 'A-B', gap: 6, gapMax: 12 }]) //=> 0
 */
export function looseOf({ edges: ids }: Pick<Piece, 'edges'>, edges: readonly Gapped[]): Ticks {
  const spare = ids.map((id) => {
    const edge = edges.find((one) => one.id === id);
    return edge ? Math.max(0, edge.gapMax - edge.gap) : 0;
  });
  return spare.length > 0 ? Math.min(...spare) : 0;
}
