import { drawPlan } from '../drawing/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { pageSpace } from './drawingSpace.ts';
import { floorMark } from './floorMark.ts';
import { forOwner } from './forOwner.ts';
import type { Sheet, SheetPage } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { tableHeightMm } from './tableHeightMm.ts';
import { tileKey } from './tileKey.ts';
import { tileSize } from './tileSize.ts';

/** What must still be known in ten years: tile, lot, joint, products, dates, and what lies hidden. */
export const recordSheet: Sheet = {
  name: 'record',
  for: 'all',
  bundles: ['owner', 'packet'],
  speaks: 'owner',
  make: (context) => {
    const rows = [...recordRows(context), ...spareRows(context)];
    return context.packet.surfaces.map((surface, i) => floorPage(context, surface, i === 0 ? rows : []));
  },
};

/** A floor's plan under the lines to fill in, which are those of the whole job and stand with the first; a further floor has a page for its plan. */
function floorPage(
  context: SheetContext,
  surface: PacketSurface,
  rows: ReturnType<typeof recordRows>,
): SheetPage {
  const { packet, say } = context;
  const { widthMm } = pageSpace(packet.spec.print.paper, 'portrait');
  const id = ['record', floorMark(packet, surface.name)].filter(Boolean).join('-');
  const tiles = tileKey(context, surface, surface.pieces, id);
  const moves = surface.carried?.some(({ kind }) => kind === 'none') ? say('sheet.record.carried') : '';
  const table = tableHeightMm(rows, { ...COLUMNS, valueMm: widthMm - COLUMNS.whatMm - CELLS_MM });
  const used = table + REMARKS_MM + (tiles.length > 0 ? KEY_MM : 0) + (moves ? KEY_MM : 0);
  const plan = planAsLaid(context, surface, id, { used, most: rows.length > 0 ? PLAN_MM.most : Infinity });
  return { floor: surface.name, data: { rows, ...plan, tiles, moves } };
}

/** The table of lines to fill in, and what the edges of its cells take of its width. */
const COLUMNS = { whatMm: 49, points: 11, rowMm: 7.4, lineMm: 5.1 } as const;
const CELLS_MM = 6;
/** Height of the remarks above and below the plan, and of the key of several tiles; the plan has what is left of the page, to a limit. */
const REMARKS_MM = 19;
const KEY_MM = 8;
const PLAN_MM = { least: 34, most: 92 };

/** The plan of a floor, small, so that a tile can still be called by its name. */
function planAsLaid(
  context: SheetContext,
  surface: PacketSurface,
  id: string,
  mm: { readonly used: number; readonly most: number },
) {
  const { packet, say, units } = context;
  const { paper, step } = packet.spec.print;
  const { widthMm, heightMm } = pageSpace(paper, 'portrait');
  const left = Math.max(PLAN_MM.least, heightMm - mm.used);
  const space = { widthMm, heightMm: Math.min(mm.most, left) };
  const label = say('sheet.layout-plan.drawing', { name: surface.name });
  const drawing = drawPlan(forOwner(context, surface), {
    id: `${id}-plan`,
    label,
    ...units,
    say,
    step,
    space,
    outside: false,
  });
  return { plan: drawing.svg, numbered: drawing.numbered };
}

/** What is printed on a box of tile; lines of several tiles would leave the plan no room, so there they share one. */
const PRINTED = ['lot', 'caliber', 'shade'] as const;

const onOneLine = ({ box }: SheetContext['packet']['spec']['tiles'][number]) =>
  PRINTED.map((part) => box?.[part] || '________').join(' · ');

function recordRows(context: SheetContext) {
  const { packet, say, length, date } = context;
  const { spec } = packet;
  const { mortar, grout, sealer } = spec.products;
  const line = (code: string, value: string) => ({ what: say(`record.${code}`), value });
  return [
    ...spec.tiles.flatMap((tile) => [
      line('tile', tile.name),
      line('size', `${tileSize(context, tile)} × ${length(tile.thickness)}`),
      ...(spec.tiles.length > 1
        ? [{ what: PRINTED.map((part) => say(`record.${part}`)).join(' · '), value: onOneLine(tile) }]
        : PRINTED.map((part) => line(part, tile.box?.[part] ?? ''))),
    ]),
    line('joint', length(spec.joint)),
    line('mortar', mortar.name ?? ''),
    line('grout', [grout.name, grout.colour].filter(Boolean).join(', ')),
    line('batch', grout.batch ?? ''),
    line(
      'sealer',
      sealer.kind === 'none'
        ? say('record.noSealer')
        : (sealer.name ?? say(`record.sealerKind.${sealer.kind}`)),
    ),
    ...(sealer.kind === 'none' ? [] : [line('sealedOn', '')]),
    line('softJoint', ''),
    line('hidden', ''),
    line('laidBy', spec.contacts.setter ?? ''),
    line('revision', `${packet.job.revision}, ${date(packet.job.date)}, ${packet.job.stamp}`),
  ];
}

/** How many tiles are left of each kind, and a line for where they are. */
function spareRows({ packet, say }: SheetContext) {
  const plans = Object.entries(packet.tiles);
  return [
    ...plans.map(([key, { keep, over }]) => ({
      what: say('record.spares'),
      value: [
        ...(plans.length > 1 ? [packet.spec.tiles.find((tile) => tile.key === key)?.name ?? key] : []),
        say('record.spareCount', { keep, over }),
      ].join(': '),
    })),
    { what: say('record.spareWhere'), value: '' },
  ];
}
