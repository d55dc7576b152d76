import { drawPlan } from '../drawing/index.ts';
import { pageSpace } from './drawingSpace.ts';
import type { Sheet } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { tileKey } from './tileKey.ts';

/** What must still be known in ten years: tile, lot, joint, products, dates, and what lies hidden. */
export const recordSheet: Sheet = {
  name: 'record',
  for: 'all',
  bundles: ['owner', 'packet'],
  speaks: 'owner',
  make: (context) => [
    {
      data: {
        rows: recordRows(context),
        spares: spares(context),
        ...planAsLaid(context),
        tiles: context.packet.surfaces
          .slice(0, 1)
          .flatMap((surface) => tileKey(context, surface, surface.pieces, 'record')),
      },
    },
  ],
};

/** Room that the lines to fill in leave on the page. */
const PLAN_MM = 92;

/** The plan of the first surface, small, so that a tile can still be called by its name. */
function planAsLaid({ packet, say, units }: SheetContext) {
  const { paper, step } = packet.spec.print;
  const surface = packet.surfaces[0];
  if (!surface) return { plan: '', numbered: false };
  const space = { widthMm: pageSpace(paper, 'portrait').widthMm, heightMm: PLAN_MM };
  const label = say('sheet.layout-plan.drawing', { name: surface.name });
  const drawing = drawPlan(surface, { id: 'record-plan', label, ...units, say, step, space, outside: false });
  return { plan: drawing.svg, numbered: drawing.numbered };
}

function recordRows({ packet, say, length, date }: SheetContext) {
  const { spec } = packet;
  const { mortar, grout, sealer } = spec.products;
  const line = (code: string, value: string) => ({ what: say(`record.${code}`), value });
  return [
    ...spec.tiles.flatMap((tile) => [
      line('tile', tile.name),
      line('size', `${length(tile.length)} × ${length(tile.width)} × ${length(tile.thickness)}`),
      line('lot', tile.box?.lot ?? ''),
      line('caliber', tile.box?.caliber ?? ''),
      line('shade', tile.box?.shade ?? ''),
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
    line('sealedOn', ''),
    line('softJoint', ''),
    line('hidden', ''),
    line('laidBy', spec.contacts.setter ?? ''),
    line('revision', `${packet.job.revision}, ${date(packet.job.date)}, ${packet.job.stamp}`),
  ];
}

function spares({ packet }: SheetContext) {
  return Object.values(packet.tiles).map((plan) => ({ tile: plan.tile, keep: plan.keep, over: plan.over }));
}
