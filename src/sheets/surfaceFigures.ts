import type { PacketSurface } from '../packet/Packet.ts';
import { edgeWords } from './edgeWords.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayFigures } from './sayFigures.ts';
import { wishFigures } from './wishFigures.ts';

/** Figures whose text names an edge, so that no sheet shows an edge's id. */
const EDGES: ReadonlySet<string> = new Set(['from', 'to', 'edge', 'between', 'at', 'on']);

/** Figures of a code about one surface: printed with their units, edges in words. */
export function surfaceFigures(
  context: SheetContext,
  surface: PacketSurface,
  figures: Readonly<Record<string, number | string>>,
): Record<string, string | number> {
  // A sentence about things by name needs to know whether it is one or several.
  const counted =
    typeof figures.names === 'string' ? { ...figures, nameCount: figures.names.split(', ').length } : figures;
  const asked =
    typeof figures.wish === 'string' ? { ...counted, ...wishFigures(surface, figures.wish) } : counted;
  const said = Object.entries(asked).map(([key, value]) =>
    EDGES.has(key) && typeof value === 'string'
      ? [key, edgeWords(surface, value, context.say)]
      : [key, value],
  );
  return sayFigures(context, Object.fromEntries(said));
}
