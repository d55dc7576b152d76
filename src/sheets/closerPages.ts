import { drawKeyPlan, drawZonePages, type ZoneDrawing } from '../drawing/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import type { Zone } from '../zones/Zone.ts';
import { pageSpace } from './drawingSpace.ts';
import type { SheetPage } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { tileKey } from './tileKey.ts';
import { unnamedHeight, unnamedPieces } from './unnamedPieces.ts';
import { zoneId } from './zoneId.ts';

/** What may stand under a plan alone on its page: a line of the pieces without a name, or two. */
const LISTS_MM = [8.5, 15] as const;
/** Under one of several parts the small plan of all; the list beside it is over the line on match lines. */
const KEY_PLAN = { widthMm: 40, heightMm: 17 } as const;
const PART_KEY_MM = 21;
const BESIDE_MM = 46;
const ACROSS_MM = 5;
/** The line that tells a pattern's tiles apart. */
const TILE_KEY_MM = 6;

/** Pages with a zone's pieces at a scale at which they bear their names and cut numbers; none where its own page does that. */
export function closerPages(
  context: SheetContext,
  surface: PacketSurface,
  zone: Zone,
  onePage: ZoneDrawing,
): readonly SheetPage[] {
  const { packet, say, units } = context;
  const { paper } = packet.spec.print;
  const id = `${zoneId(packet, surface, zone)}-names`;
  const own = new Set(zone.pieces);
  const pieces = surface.pieces.filter(({ id }) => own.has(id));
  const tiles = tileKey(context, surface, pieces, id).length > 0 ? TILE_KEY_MM : 0;
  const spaceOver = (mm: number) => {
    const spaceOf = (way: 'portrait' | 'landscape') => {
      const { widthMm, heightMm } = pageSpace(paper, way);
      return { widthMm, heightMm: heightMm - mm - tiles };
    };
    return { portrait: spaceOf('portrait'), landscape: spaceOf('landscape') };
  };
  const label = say('sheet.zone-names.drawing', { zone: zone.number });
  const isTold = (widthMm: number, mm: number) => (unnamed: readonly string[]) =>
    listMm(context, surface, unnamed, widthMm) <= mm;
  const { widthMm } = pageSpace(paper, 'portrait');
  const uses = [
    ...LISTS_MM.map((mm) => ({ several: false, space: spaceOver(mm), isTold: isTold(widthMm, mm) })),
    {
      several: true,
      space: spaceOver(PART_KEY_MM),
      isTold: isTold(widthMm - BESIDE_MM, PART_KEY_MM - ACROSS_MM),
    },
  ];
  const drawn = drawZonePages(surface, zone, onePage, { id, label, ...units, say, uses });
  const count = drawn?.pages.length ?? 0;
  return (drawn?.pages ?? []).map(({ part, drawing }) => ({
    as: 'zone-names',
    floor: surface.name,
    suffix: count > 1 ? `${zone.number}-names-${part.number}` : `${zone.number}-names`,
    figures: { zone: zone.number, part: count > 1 ? part.number : 0, count },
    landscape: drawn!.parts.orientation === 'landscape',
    scale: `1:${drawn!.parts.ratio}`,
    data: {
      plan: drawing.svg,
      unnamed: unnamedPieces(surface, drawing.unnamed),
      tiles: tileKey(context, surface, pieces, `${id}-${part.number}`),
      key:
        count > 1
          ? drawKeyPlan(surface, drawn!.parts, part.number, {
              id: `${id}-key-${part.number}`,
              label: say('sheet.zone-names.key'),
              space: KEY_PLAN,
            }).svg
          : '',
    },
  }));
}

/** How high the list of the pieces without a name stands, in mm. */
function listMm(
  { say, second }: SheetContext,
  surface: PacketSurface,
  unnamed: readonly string[],
  widthMm: number,
): number {
  const heading = say('sheet.zone.unnamed') + (second?.say('sheet.zone.unnamed') ?? '');
  return unnamedHeight(unnamedPieces(surface, unnamed), heading, widthMm);
}
