import type { PacketSurface } from '../packet/Packet.ts';
import type { Zone } from '../zones/Zone.ts';
import { floorName } from './floorName.ts';
import type { Sheet } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { tileSize } from './tileSize.ts';

/** What stands in which stack, and what is in the box of spares? A label for each zone's stack, and one for each tile's spares. */
export const labels: Sheet = {
  name: 'labels',
  for: 'all',
  bundles: ['templates'],
  speaks: 'crew',
  make: (context) => {
    const { packet } = context;
    const stacks = packet.surfaces.flatMap((surface) =>
      surface.zones.map((zone) => stack(context, surface, zone)),
    );
    const spares = Object.values(packet.tiles).map(({ tile }) => spareBox(context, tile));
    const head = `${packet.job.title} · ${packet.job.revision} · ${packet.job.stamp}`;
    return [{ data: { stacks, spares, head, owner: packet.spec.print.owner } }];
  },
};

/** A stack: how many whole tiles, and how many of each cut. */
function stack({ packet }: SheetContext, surface: PacketSurface, zone: Zone) {
  const inZone = new Set(zone.pieces);
  const cuts = surface.cuts
    .map(({ number, pieces }) => ({ number, count: pieces.filter((piece) => inZone.has(piece)).length }))
    .filter(({ count }) => count > 0);
  const cut = cuts.reduce((sum, { count }) => sum + count, 0);
  return {
    surface: floorName(packet, surface.name),
    zone: zone.number,
    whole: zone.pieces.length - cut,
    cut,
    cuts,
    first: zone.beyond ?? zone.first,
    last: zone.last,
  };
}

/** What must be known of a box of spares years later, by the codes of the record; empty values are lines to fill in. */
function spareBox(context: SheetContext, key: string) {
  const { packet, length } = context;
  const tile = packet.spec.tiles.find((one) => one.key === key)!;
  const { grout } = packet.spec.products;
  const { keep, over } = packet.tiles[key]!;
  return {
    name: tile.name,
    size: `${tileSize(context, tile)} × ${length(tile.thickness)}`,
    lot: tile.box?.lot ?? '',
    caliber: tile.box?.caliber ?? '',
    shade: tile.box?.shade ?? '',
    joint: length(packet.spec.joint),
    grout: [grout.name, grout.colour].filter(Boolean).join(', '),
    batch: grout.batch ?? '',
    keep,
    over,
  };
}
