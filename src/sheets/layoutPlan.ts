import { drawCheckBars, drawPlan } from '../drawing/index.ts';
import { bothSpaces } from './drawingSpace.ts';
import { wholeAndCut } from './wholeAndCut.ts';
import type { Sheet } from './Sheet.ts';

/** Where does every piece go? Each one to scale, named, whole and cut told apart, end cuts outside. */
export const layoutPlan: Sheet = {
  name: 'layout-plan',
  for: 'all',
  bundles: ['crew', 'owner', 'office', 'packet'],
  speaks: 'crew',
  make: (context) => {
    const { packet, say } = context;
    const { system, paper, step } = packet.spec.print;
    return packet.surfaces.map((surface, i) => {
      const drawing = drawPlan(surface, {
        id: `plan-${i + 1}`,
        label: say('sheet.layout-plan.drawing', { name: surface.name }),
        system,
        say,
        step,
        space: bothSpaces(paper, 34),
      });
      return {
        ...(i > 0 ? { suffix: surface.name } : {}),
        landscape: drawing.orientation === 'landscape',
        ...(drawing.ratio ? { scale: `1:${drawing.ratio}` } : {}),
        data: {
          plan: drawing.svg,
          bars: drawCheckBars({ id: `bars-${i + 1}`, label: say('drawing.bars'), system, say }).svg,
          unnamed: drawing.unnamed,
          ...wholeAndCut(surface),
        },
      };
    });
  },
};
