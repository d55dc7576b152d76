import { drawCheckBars, drawPlan } from '../drawing/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { bothSpaces } from './drawingSpace.ts';
import { faultLines } from './faultLines.ts';
import type { Sheet, SheetPage } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { wholeAndCut } from './wholeAndCut.ts';

/** Where does every piece go? Each one to scale, named, whole and cut told apart, end cuts outside; below, what the layout itself has to say. */
export const layoutPlan: Sheet = {
  name: 'layout-plan',
  for: 'all',
  bundles: ['crew', 'office', 'packet'],
  speaks: 'crew',
  make: (context) => context.packet.surfaces.map((surface, i) => planPage(context, surface, i)),
};

/** The key, a line for names that found no place, and the heading of the faults; then one line a fault, or two. */
const KEY_MM = 24;
const FAULT_MM = 5;
/** More than this would make the plan small: then the comparison of starts has them all. */
const MOST_FAULTS = 6;

function planPage(context: SheetContext, surface: PacketSurface, i: number): SheetPage {
  const { packet, say } = context;
  const { system, paper, step } = packet.spec.print;
  const all = faultLines(context, surface);
  const faults = all.length > MOST_FAULTS ? [say('sheet.layout-plan.elsewhere', { count: all.length })] : all;
  const drawing = drawPlan(surface, {
    id: `plan-${i + 1}`,
    label: say('sheet.layout-plan.drawing', { name: surface.name }),
    system,
    say,
    step,
    space: bothSpaces(paper, KEY_MM + FAULT_MM * faults.length),
  });
  return {
    ...(i > 0 ? { suffix: surface.name } : {}),
    landscape: drawing.orientation === 'landscape',
    ...(drawing.ratio ? { scale: `1:${drawing.ratio}` } : {}),
    data: {
      plan: drawing.svg,
      bars: drawCheckBars({ id: `bars-${i + 1}`, label: say('drawing.bars'), system, say }).svg,
      unnamed: drawing.unnamed,
      faults,
      ...wholeAndCut(surface),
    },
  };
}
