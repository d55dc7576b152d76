import type { FramedRoom } from '../layout/Layout.ts';
import type { Ticks } from '../measure/index.ts';
import { isFold } from '../room/isFold.ts';
import { lineCrossings } from './lineCrossings.ts';

/** A piece of a line with floor under it, and the edges of the room at its ends. */
export interface FreeSpan {
  readonly from: Ticks;
  readonly to: Ticks;
  readonly edges: readonly [string, string];
}

/** The longest pieces of a line across the room that meet no wall and no obstacle, in order; a fold is crossed at its joint. */
export function freeSpans(frame: FramedRoom, axis: 0 | 1, level: number): FreeSpan[] {
  const walls = lineCrossings(frame.outline, axis, level);
  let spans: FreeSpan[] = [];
  for (let i = 0; i + 1 < walls.length; i += 2) {
    const [a, b] = [walls[i]!, walls[i + 1]!];
    spans.push({
      from: a.at,
      to: b.at,
      edges: [frame.edges[a.edge]?.id ?? '', frame.edges[b.edge]?.id ?? ''],
    });
  }
  for (const { ring, edges, name } of frame.obstacles.filter((one) => !isFold(one))) {
    const cuts = lineCrossings(ring, axis, level);
    for (let i = 0; i + 1 < cuts.length; i += 2) {
      const [a, b] = [cuts[i]!, cuts[i + 1]!];
      const ids = [edges[a.edge]?.id ?? name, edges[b.edge]?.id ?? name] as const;
      spans = spans.flatMap((span) => without(span, a.at, b.at, ids));
    }
  }
  return spans.filter(({ from, to }) => to > from).sort((a, b) => a.from - b.from);
}

function without(span: FreeSpan, from: Ticks, to: Ticks, ids: readonly [string, string]): FreeSpan[] {
  if (to <= span.from || from >= span.to) return [span];
  return [
    { from: span.from, to: from, edges: [span.edges[0], ids[0]] },
    { from: to, to: span.to, edges: [ids[1], span.edges[1]] },
  ];
}
