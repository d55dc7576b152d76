import type { Cut } from './Cut.ts';
import type { OutlineEdge } from './Outline.ts';

/** The edges of an outline as a cut has them: what follows a circle is told by the circle. */
export function outlineEdges(edges: readonly OutlineEdge[]): Cut['edges'] {
  return edges
    .filter(({ what }) => what !== 'arc')
    .map(({ from, to, what, via }) => ({ from, to, factory: what === 'factory', ...(via && { via }) }));
}
