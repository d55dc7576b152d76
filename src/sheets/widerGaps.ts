import { edgeGaps } from '../materials/edgeGaps.ts';
import type { Ticks } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { edgeAsNamed } from './edgeAsNamed.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayThing } from './sayThing.ts';

type Floor = Pick<PacketSurface, 'edges' | 'obstacles' | 'field' | 'left'>;

/** A wider gap along all of an edge, `strip` none where no strip is set there; or at so many places, where strips are left out. */
interface Wider {
  readonly edge: string;
  readonly gap: number;
  readonly strip: 'set' | 'none';
  readonly places?: number;
}

/**
 * Gaps of a floor that are wider than the one told, by edge, in one line: where the job file says so, and where a strip is left
 * out, along all of the edge or at so many places of it; before them the floor's own least where it is wider. Empty where every gap
 * is the one told. A nick at a point of tile is no gap.
 */
export function widerGaps(
  { say, length }: Pick<SheetContext, 'say' | 'length'>,
  floor: Floor,
  told: Ticks,
): string {
  const least = Math.min(...floor.edges.map(({ gap }) => gap));
  const names = [...new Set(floor.edges.map(({ id }) => edgeAsNamed(id)))];
  const wider = names
    .flatMap((name) => widerOf(name, floor, least))
    .map(({ edge, gap, strip, places }) => {
      const words = { edge: sayThing(say, edge), gap: length(gap) };
      return places === undefined
        ? say('sheet.job-sheet.gapWider', { ...words, strip })
        : say('sheet.job-sheet.gapPlaces', { ...words, places });
    });
  return [...(least > told ? [length(least)] : []), ...wider].join(' · ');
}

/** The parts of an edge that bears one name: its own gap where that is wider, and what is left out. */
function widerOf(edge: string, floor: Floor, least: number): readonly Wider[] {
  const own = floor.edges.filter(({ id }) => edgeAsNamed(id) === edge);
  const parts = edgeGaps(floor, floor.left).filter(({ edge: { id } }) => own.some((one) => one.id === id));
  const out = parts.flatMap((part) => part.out ?? []);
  const isAll = out.length > 0 && parts.every((part) => part.out?.length === part.length);
  const widest = Math.max(...own.map(({ gap }) => gap));
  const deepest = Math.max(...out.map(({ gap }) => gap));
  if (isAll) return [{ edge, gap: Math.max(widest, deepest), strip: 'none' }];
  const places = out.reduce((sum, one) => sum + one.places, 0);
  return [
    ...(widest > least ? [{ edge, gap: widest, strip: 'set' as const }] : []),
    ...(places > 0 ? [{ edge, gap: deepest, strip: 'none' as const, places }] : []),
  ];
}
