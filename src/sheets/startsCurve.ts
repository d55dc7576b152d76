import { drawChoice, type Space } from '../drawing/index.ts';
import type { CurvePoint, PacketSurface } from '../packet/Packet.ts';
import { asSaid } from './asSaid.ts';
import { pageSpace } from './drawingSpace.ts';
import type { Sheet, SheetPage } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { sawnLength } from './sawnLength.ts';
import { smallestShare } from './smallestShare.ts';
import { startAsWish } from './startAsWish.ts';
import { startLine } from './startLine.ts';
import { tileKey } from './tileKey.ts';

/** What does a wider narrowest cut cost in tiles? The chosen start and others on the curve, side by side at one scale. */
export const startsCurve: Sheet = {
  name: 'starts-curve',
  for: 'estimator',
  bundles: ['office', 'packet'],
  speaks: 'owner',
  make: (context) =>
    context.packet.surfaces.flatMap((surface, i) =>
      surface.curve ? [curvePage(context, surface, surface.curve, i)] : [],
    ),
};

/** Between drawings, and what stands over and under them, in mm. */
const GUTTER_MM = 4;
const WORDS_MM = 104;

/** Drawings of the same size for all, as wide as so many leave room for. */
function spaceFor({ packet }: SheetContext, count: number): Space {
  const { widthMm, heightMm } = pageSpace(packet.spec.print.paper, 'landscape');
  const columns = Math.max(2, count);
  return { widthMm: (widthMm - 34 - (columns - 1) * GUTTER_MM) / columns, heightMm: heightMm - WORDS_MM };
}

function curvePage(
  context: SheetContext,
  surface: PacketSurface,
  curve: readonly CurvePoint[],
  i: number,
): SheetPage {
  const { say, units } = context;
  const drawings = curve.map(({ pieces }, k) =>
    drawChoice(asSaid(context, surface), pieces, {
      id: `curve-${i + 1}-${k + 1}`,
      label: say('sheet.starts-curve.drawing', { number: k + 1 }),
      ...units,
      say,
      space: spaceFor(context, curve.length),
    }),
  );
  return {
    floor: surface.name,
    landscape: true,
    scale: `1:${drawings[0]!.ratio}`,
    data: {
      plans: drawings.map(({ svg }) => svg),
      tiles: tileKey(context, surface, surface.pieces, `curve-${i + 1}`),
      rows: rowsOf(context, surface, curve),
      wishes: curve.map(({ candidate }) =>
        startLine(startAsWish(context, candidate, context.packet.spec.surfaces[i]?.start)),
      ),
    },
  };
}

/** One line of figures each, the chosen start first. */
function rowsOf(context: SheetContext, surface: PacketSurface, curve: readonly CurvePoint[]) {
  const { say } = context;
  const row = (code: string, tell: (point: CurvePoint) => string) => ({
    name: say(`sheet.starts-curve.${code}`),
    values: curve.map(tell),
  });
  // Tiles are counted for all of the floor, pieces where the pattern lies: of what lies apart from it no start changes any.
  const isAll = surface.pieces.length === surface.start.chosen.pieces;
  return [
    row('narrowest', ({ candidate }) => say('sheet.starts-curve.narrow', smallestShare(context, candidate))),
    row('tiles', ({ tiles, bound }) =>
      say('sheet.starts-curve.proved', { tiles, bound, gap: tiles - bound }),
    ),
    row(
      isAll ? 'pieces' : 'fieldPieces',
      ({ candidate: { pieces, whole, cut } }) => `${pieces} = ${whole} + ${cut}`,
    ),
    row('underHalf', ({ candidate }) => String(candidate.underHalf)),
    row('cutInside', ({ candidate }) => String(candidate.hardCuts)),
    row('cutLength', ({ candidate }) => sawnLength(context, candidate.cutLength)),
    row('fences', ({ fences }) => String(fences)),
    ...(curve.some(({ boxes }) => boxes !== undefined)
      ? [row('boxes', ({ boxes }) => String(boxes ?? ''))]
      : []),
  ];
}
