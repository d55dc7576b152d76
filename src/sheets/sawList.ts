import type { Cut } from '../cuts/Cut.ts';
import { drawCutIcon } from '../drawing/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import type { Zone } from '../zones/Zone.ts';
import type { Sheet } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';

/** What to saw, zone by zone and fence setting by fence setting; hard cuts have cards of their own. */
export const sawList: Sheet = {
  name: 'saw-list',
  for: 'setter',
  bundles: ['crew', 'packet'],
  speaks: 'crew',
  make: (context) => {
    const zones = context.packet.surfaces.flatMap((surface) =>
      surface.zones.map((zone) => ({ number: zone.number, groups: fenceGroups(context, surface, zone) })),
    );
    const some = zones.filter((zone) => zone.groups.length > 0);
    return some.length === 0 ? [] : [{ data: { zones: some, rule: context.length(context.packet.rounding.step) } }];
  },
};

/** Cuts of one zone gathered under their first fence setting, the widest first. */
function fenceGroups(context: SheetContext, surface: PacketSurface, zone: Zone) {
  const inZone = new Set(zone.pieces);
  const lines = surface.cuts
    .filter((cut) => !cut.hard)
    .map((cut) => ({ cut, pieces: cut.pieces.filter((piece) => inZone.has(piece)) }))
    .filter(({ pieces }) => pieces.length > 0);
  const settings = [...new Set(lines.map(({ cut }) => cut.fences[0]?.saw ?? 0))].sort((a, b) => b - a);
  return settings.map((saw) => ({
    setting: saw > 0 ? context.figure(saw) : null,
    lines: lines
      .filter(({ cut }) => (cut.fences[0]?.saw ?? 0) === saw)
      .map(({ cut, pieces }) => sawLine(context, surface, zone, cut, pieces)),
  }));
}

function sawLine(
  context: SheetContext,
  surface: PacketSurface,
  zone: Zone,
  cut: Cut,
  pieces: readonly string[],
) {
  const tile = context.packet.spec.tiles.find(({ key }) => key === cut.tile)!;
  const taper = cut.kind === 'taper';
  return {
    number: cut.number,
    count: pieces.length,
    pieces,
    icon: drawCutIcon(cut, tile, {
      id: `icon-${surface.name}-${zone.number}-${cut.number}`,
      label: context.say('sheet.saw-list.icon', { number: cut.number }),
      system: context.packet.spec.print.system,
      say: context.say,
    }).svg,
    then: cut.fences.slice(1).map((fence) => context.figure(fence.saw)),
    /** A tapered piece is marked at both ends and cut to the line, so it has two lengths instead of one setting. */
    lengths: taper ? cut.sizes.map((size) => context.figure(size.saw)) : [],
    kind: context.say(`cut.${cut.kind}`),
  };
}
