import type { Ticks } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { edgeAsNamed } from './edgeAsNamed.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayThing } from './sayThing.ts';

/**
 * Gaps of a floor that are wider than the one told, by edge, in one line: where the job file says so, and where a strip is left
 * out, as wide as it gets there; before them the floor's own least where it is wider. Empty where every gap is the one told.
 */
export function widerGaps(
  { say, length }: Pick<SheetContext, 'say' | 'length'>,
  { edges, left }: Pick<PacketSurface, 'edges' | 'left'>,
  told: Ticks,
): string {
  const least = Math.min(...edges.map(({ gap }) => gap));
  const widest = new Map<string, { gap: number; strip: 'set' | 'none' }>();
  for (const { id, gap } of edges) {
    const out = left.filter((one) => one.why === 'gapOnly' && one.edge === id).map((one) => one.gap ?? 0);
    const found = Math.max(gap, ...out);
    const edge = edgeAsNamed(id);
    if (found > least && found > (widest.get(edge)?.gap ?? 0))
      widest.set(edge, { gap: found, strip: out.length > 0 ? 'none' : 'set' });
  }
  const wider = [...widest].map(([edge, { gap, strip }]) =>
    say('sheet.job-sheet.gapWider', { edge: sayThing(say, edge), gap: length(gap), strip }),
  );
  return [...(least > told ? [length(least)] : []), ...wider].join(' · ');
}
