import { drawPlan } from '../drawing/index.ts';
import { pageSpace } from './drawingSpace.ts';
import { forOwner } from './forOwner.ts';
import type { Sheet } from './Sheet.ts';
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
    const tiles = context.packet.surfaces
      .slice(0, 1)
      .flatMap((surface) => tileKey(context, surface, surface.pieces, 'record'));
    const { widthMm } = pageSpace(context.packet.spec.print.paper, 'portrait');
    const table = tableHeightMm(rows, { ...COLUMNS, valueMm: widthMm - COLUMNS.whatMm - CELLS_MM });
    const { carried = [] } = context.packet.surfaces[0] ?? {};
    const moves = carried.some(({ kind }) => kind === 'none') ? context.say('sheet.record.carried') : '';
    const used = table + REMARKS_MM + (tiles.length > 0 ? KEY_MM : 0) + (moves ? KEY_MM : 0);
    return [{ data: { rows, ...planAsLaid(context, used), tiles, moves } }];
  },
};

/** The table of lines to fill in, and what the edges of its cells take of its width. */
const COLUMNS = { whatMm: 49, points: 11, rowMm: 7.4, lineMm: 5.1 } as const;
const CELLS_MM = 6;
/** Height of the remarks above and below the plan, and of the key of several tiles; the plan has what is left of the page, to a limit. */
const REMARKS_MM = 19;
const KEY_MM = 8;
const PLAN_MM = { least: 34, most: 92 };

/** The plan of the first surface, small, so that a tile can still be called by its name. */
function planAsLaid(context: SheetContext, usedMm: number) {
  const { packet, say, units } = context;
  const { paper, step } = packet.spec.print;
  const surface = packet.surfaces[0];
  if (!surface) return { plan: '', numbered: false };
  const { widthMm, heightMm } = pageSpace(paper, 'portrait');
  const left = Math.max(PLAN_MM.least, heightMm - usedMm);
  const space = { widthMm, heightMm: Math.min(PLAN_MM.most, left) };
  const label = say('sheet.layout-plan.drawing', { name: surface.name });
  const drawing = drawPlan(forOwner(context, surface), {
    id: 'record-plan',
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
