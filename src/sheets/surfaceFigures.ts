import { sawDown } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { edgeWords } from './edgeWords.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayFigures } from './sayFigures.ts';
import { wishFigures } from './wishFigures.ts';

/** Figures whose text names an edge, so that no sheet shows an edge's id. */
const EDGES: ReadonlySet<string> = new Set(['from', 'to', 'edge', 'between', 'at', 'on']);

/** Figures that are sizes of cuts: told as the saw list tells them. */
const CUTS: ReadonlySet<string> = new Set(['narrow', 'wide']);

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
  const { step } = context.packet.rounding;
  const said = Object.entries(asked).map(([key, value]) => {
    if (typeof value === 'string')
      return [key, EDGES.has(key) ? edgeWords(surface, value, context.say) : value];
    return [key, CUTS.has(key) ? sawDown(value, step) : value];
  });
  return sayFigures(context, Object.fromEntries(said));
}
