import type { Row } from '../cuts/Cut.ts';
import { printLength } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { closingRow } from './closingRow.ts';
import { edgeWords } from './edgeWords.ts';
import { floorName } from './floorName.ts';
import { type PrintedRow, printedRow } from './printedRow.ts';
import type { Sheet } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';

/** Do the cuts add up to the room? Every row both ways, wall to wall, and its sum as printed. */
export const rowSums: Sheet = {
  name: 'row-sums',
  for: 'estimator',
  bundles: ['office', 'packet'],
  speaks: 'crew',
  make: (context) => {
    const surfaces = context.packet.surfaces.filter(({ rows }) => rows.length > 0);
    if (surfaces.length === 0) return [];
    const { packet, units, length } = context;
    return [
      {
        data: {
          unit: units.system,
          step: length(packet.rounding.step),
          surfaces: surfaces.map((surface) => rowTable(context, surface)),
        },
      },
    ];
  },
};

function rowTable(context: SheetContext, surface: PacketSurface) {
  const axes = (['along', 'across'] as const).map((axis) => ({
    title: context.say(`sheet.row-sums.${axis}`),
    rows: surface.rows.filter((row) => row.axis === axis).map((row) => rowLine(context, surface, row)),
  }));
  return { floor: floorName(context.packet, surface.name), axes: axes.filter(({ rows }) => rows.length > 0) };
}

function rowLine(context: SheetContext, surface: PacketSurface, row: Row) {
  const [from, to] = row.edges.map((edge) => edgeWords(surface, edge, context.say));
  const printed = printedRow(row, context.packet.rounding.step);
  return {
    id: row.id,
    ends: `${from} – ${to}`,
    sum: closingRow(context, printed),
    space: spaceOf(context, printed),
  };
}

/** A row's length as printed, to which the terms add up. */
function spaceOf({ units }: SheetContext, { room }: PrintedRow): string {
  return printLength(room, units, { round: 'down', feet: units.system === 'inches' });
}
