import { drawSection } from '../drawing/index.ts';
import type { HeightResult } from '../packet/Packet.ts';
import type { Sheet } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayFigures } from './sayFigures.ts';

/** Does the floor meet its doors, flanges and neighbours? The layers cut through, then each height with pass or fail. */
export const heights: Sheet = {
  name: 'heights',
  for: 'all',
  bundles: ['office', 'packet'],
  speaks: 'crew',
  make: (context) => {
    const { packet, say, length } = context;
    const { system } = packet.spec.print;
    if (packet.layers.length === 0) return [];
    const drawing = drawSection(packet, { id: 'section', label: say('sheet.heights.drawing'), system, say });
    return [
      {
        ...(drawing.ratio ? { scale: `1:${drawing.ratio}` } : {}),
        data: {
          drawing: drawing.svg,
          stack: length(packet.heights.stack),
          removed: length(packet.heights.removed),
          undercut: length(packet.heights.undercut),
          results: packet.heights.results.map((result) => resultRow(context, result)),
        },
      },
    ];
  },
};

function resultRow(context: SheetContext, { name, after, pass, code, figures }: HeightResult) {
  return {
    name,
    after: `${after > 0 ? '+' : ''}${context.length(after)}`,
    pass,
    state: context.say(pass ? 'limit.pass' : 'limit.fail'),
    text: context.say(code, sayFigures(context, figures)),
  };
}
