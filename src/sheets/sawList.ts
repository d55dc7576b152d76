import type { Cut } from '../cuts/Cut.ts';
import { isHard } from '../cuts/isHard.ts';
import { drawCutIcon } from '../drawing/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import type { Zone } from '../zones/Zone.ts';
import { floorName } from './floorName.ts';
import { type HandMark, handMarks } from './handMarks.ts';
import { exampleOf, mateSaid, matesSaid } from './mateSaid.ts';
import type { Sheet } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { partsOfPage, savesPage } from './savesPage.ts';
import { sawnByTile, sharesTiles } from './sawnByTile.ts';
import { type MatesOf, tileMates } from './tileMates.ts';
import { zoneId } from './zoneId.ts';

/** Rows at the end of the list that stay on one page with the row before them. */
const LAST_ROWS = 3;

/** What to saw, zone by zone and fence setting by fence setting, and once more tile by tile; what has a card stands on that. */
export const sawList: Sheet = {
  name: 'saw-list',
  for: 'setter',
  bundles: ['crew', 'packet'],
  speaks: 'crew',
  make: (context) => {
    const matesOf = tileMates(context.packet);
    const zones = context.packet.surfaces.flatMap((surface) =>
      surface.zones.map((zone) => zoneCuts({ ...context, matesOf }, surface, zone)),
    );
    const some = zones.filter(({ fences, marked }) => fences.length + marked.length > 0);
    const { system: unit, paper } = context.packet.spec.print;
    // Rows at the end stay with those before: a page for a few of them is a page too many.
    const lines = some.flatMap(({ fences, marked }) => [
      ...fences.flatMap((fence) => fence.lines),
      ...marked,
    ]);
    const mates = matesSaid(context, lines);
    const tight = savesPage(some, paper, mates.length);
    const points = lines.some(({ marks }) => marks.some(({ atPoint }) => atPoint));
    const last = lines.slice(-LAST_ROWS).map(({ key }) => key);
    return [
      ...(some.length > 0
        ? [{ figures: { byTile: 'no' }, data: { zones: some, unit, tight, last, points, mates } }]
        : []),
      ...(sharesTiles(context)
        ? [
            {
              suffix: 'by-tile',
              figures: { byTile: 'yes' },
              bundles: ['packet'] as const,
              data: { ...sawnByTile(context), unit },
            },
          ]
        : []),
    ];
  },
};

/** What is asked of every line: the sheet's context, and what comes out of a piece's tile beside it. */
interface SawContext extends SheetContext {
  readonly matesOf: MatesOf;
}

/** Straight cuts of one zone gathered under their first fence setting, the widest first; then those that are marked by hand. */
function zoneCuts(context: SawContext, surface: PacketSurface, zone: Zone) {
  const inZone = new Set(zone.pieces);
  const lines = surface.cuts
    .filter((cut) => !isHard(cut))
    .map((cut) => ({ cut, pieces: cut.pieces.filter((piece) => inZone.has(piece)) }))
    .filter(({ pieces }) => pieces.length > 0)
    .map(({ cut, pieces }) => ({
      saw: cut.fences[0]?.saw ?? 0,
      line: sawLine(context, surface, zone, cut, pieces),
    }));
  const settings = [...new Set(lines.map(({ saw }) => saw))].filter((saw) => saw > 0).sort((a, b) => b - a);
  const under = (saw: number) => lines.filter((one) => one.saw === saw).map(({ line }) => line);
  return {
    number: zone.number,
    floor: floorName(context.packet, surface.name),
    fences: settings.flatMap((saw) =>
      partsOfPage(under(saw), context.packet.spec.print.paper).map((part) => ({
        setting: context.figure(saw),
        lines: part,
      })),
    ),
    marked: under(0),
    from: measuredFrom(under(0)),
  };
}

/** What sizes that are marked by hand are measured from: edges of tiles, their points, or both. */
function measuredFrom(lines: readonly { readonly marks: readonly HandMark[] }[]): 'edge' | 'point' | 'both' {
  const marks = lines.flatMap((line) => line.marks);
  if (marks.every(({ atPoint }) => !atPoint)) return 'edge';
  return marks.every(({ atPoint }) => atPoint) ? 'point' : 'both';
}

function sawLine(
  context: SawContext,
  surface: PacketSurface,
  zone: Zone,
  cut: Cut,
  pieces: readonly string[],
) {
  const { say, figure, packet, units, matesOf } = context;
  const tile = packet.spec.tiles.find(({ key }) => key === cut.tile)!;
  const marks = handMarks(context, cut, tile);
  return {
    key: `${surface.name} ${zone.number} ${cut.number}`,
    number: cut.number,
    pieces,
    mates: pieces.map((piece) => mateSaid(context, matesOf(surface.name, piece))),
    example: pieces.flatMap((piece) => exampleOf(cut, matesOf(surface.name, piece)))[0],
    icon: drawCutIcon(cut, tile, {
      id: `icon-${zoneId(packet, surface, zone)}-${cut.number}`,
      label: say('sheet.saw-list.icon', {
        number: cut.number,
        fence: cut.fences.length > 0 ? 'yes' : marks.some(({ atPoint }) => atPoint) ? 'point' : 'no',
      }),
      ...units,
      say,
    }).svg,
    next: cut.fences.slice(1).map((fence) => figure(fence.saw)),
    marks,
    many: marks.length > 2,
  };
}
