import type { Row } from '../cuts/Cut.ts';
import { drawZone } from '../drawing/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import type { Zone } from '../zones/Zone.ts';
import { closingRow } from './closingRow.ts';
import { drawingSpace } from './drawingSpace.ts';
import type { Sheet, SheetPage } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';

/** What to set in one go: its plan, its cuts to tick, its mortar, the way out, and when it may be walked. */
export const zoneSheet: Sheet = {
  name: 'zone',
  for: 'setter',
  bundles: ['crew', 'packet'],
  speaks: 'crew',
  make: (context) =>
    context.packet.surfaces.flatMap((surface) => surface.zones.map((zone) => zonePage(context, surface, zone))),
};

function zonePage(context: SheetContext, surface: PacketSurface, zone: Zone): SheetPage {
  const { packet, say, time, number } = context;
  const drawing = drawZone(surface, zone, {
    id: `zone-${zone.number}`,
    label: say('sheet.zone.drawing', { zone: zone.number }),
    system: packet.spec.print.system,
    say,
    space: drawingSpace(packet.spec.print.paper, 'portrait', 0.5),
  });
  const entry = (code: string) => packet.calendar.find((one) => one.code === code && one.zone === zone.number);
  const set = entry('set');
  const walk = entry('walk') ?? packet.calendar.find((one) => one.code === 'grout');
  return {
    suffix: String(zone.number),
    figures: { zone: zone.number },
    ...(drawing.ratio ? { scale: `1:${drawing.ratio}` } : {}),
    data: {
      plan: drawing.svg,
      set: set ? time(set.from) : '',
      walk: walk ? time(walk.from) : '',
      first: zone.first,
      last: zone.last,
      wayOut: zone.wayOut ?? '',
      count: zone.pieces.length,
      cuts: zoneCuts(surface, zone),
      mortar: number(massOf(context, zone.mortarKg), 0),
      massUnit: packet.spec.print.system === 'mm' ? 'kg' : 'lb',
      batches: zone.batches,
      rows: surface.rows.filter((row) => zone.rows.includes(row.id)).map((row) => foundRow(context, surface, row)),
    },
  };
}

function massOf({ packet }: SheetContext, massKg: number): number {
  return packet.spec.print.system === 'mm' ? massKg : massKg / 0.45359237;
}

/** The zone's cuts by number, with a box for each piece. */
function zoneCuts(surface: PacketSurface, zone: Zone) {
  const inZone = new Set(zone.pieces);
  return surface.cuts
    .map((cut) => ({
      number: cut.number,
      pieces: cut.pieces.filter((piece) => inZone.has(piece)),
      hard: cut.hard,
    }))
    .filter((cut) => cut.pieces.length > 0);
}

/** A row with its sum, the space it should have, and the cuts to which a difference goes. */
function foundRow(context: SheetContext, surface: PacketSurface, row: Row) {
  const cutOf = new Map(surface.cuts.flatMap((cut) => cut.pieces.map((piece) => [piece, cut.number] as const)));
  const cuts = row.terms.flatMap((term) => (term.what === 'piece' ? (cutOf.get(term.id) ?? []) : []));
  return {
    id: row.id,
    sum: closingRow(context, row),
    space: context.longLength(row.terms.reduce((total, term) => total + term.saw, 0)),
    cuts: [...new Set(cuts)],
  };
}
