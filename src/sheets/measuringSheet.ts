import { drawMeasureForm } from '../drawing/index.ts';
import type { Sheet, SheetPage } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';

/** What do you measure on the first visit? Blank, for a rectangle and for an L. */
export const measuringSheet: Sheet = {
  name: 'measuring',
  for: 'setter',
  bundles: ['packet'],
  speaks: 'crew',
  make: (context) => [
    form(context, 'rectangle', ['A-B', 'B-C', 'C-D', 'D-A'], ['A-C', 'B-D']),
    form(context, 'L', ['A-B', 'B-C', 'C-D', 'D-E', 'E-F', 'F-A'], ['A-C', 'A-D', 'A-E', 'C-E']),
  ],
};

function form(
  { packet, say }: SheetContext,
  shape: 'rectangle' | 'L',
  walls: string[],
  diagonals: string[],
): SheetPage {
  return {
    suffix: shape.toLowerCase(),
    figures: { shape },
    data: {
      drawing: drawMeasureForm(shape, {
        id: `measure-${shape}`,
        label: say('sheet.measuring.drawing'),
        system: packet.spec.print.system,
        say,
      }).svg,
      walls,
      diagonals,
    },
  };
}
