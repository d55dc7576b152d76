import { drawCheckBars, drawSetOut, type MovedSize } from '../drawing/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { bothSpaces } from './drawingSpace.ts';
import type { Sheet, SheetPage } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { setOutFigures } from './setOutFigures.ts';

/** Where do you snap the lines? A drawing as large as its page holds, and a page with the figures of every mark. */
export const setOut: Sheet = {
  name: 'set-out',
  for: 'setter',
  bundles: ['crew', 'packet'],
  speaks: 'crew',
  make: (context) =>
    context.packet.surfaces.flatMap((surface, i) => {
      const { page, moved } = drawingPage(context, surface, i);
      return [page, figuresPage(context, surface, i, moved)];
    }),
};

/** What stands under the drawing in mm: the check, the first tile and how lines and joints lie, five lines at most. */
const BELOW_MM = 26;

function drawingPage(
  { packet, say, length }: SheetContext,
  surface: PacketSurface,
  i: number,
): { readonly page: SheetPage; readonly moved: readonly MovedSize[] } {
  const { system, paper, step } = packet.spec.print;
  const { chalk } = surface;
  const drawing = drawSetOut(surface, {
    id: `set-out-${i + 1}`,
    label: say('sheet.set-out.drawing', { name: surface.name }),
    system,
    say,
    step,
    space: bothSpaces(paper, BELOW_MM),
  });
  const [short, long] = chalk.check.legs;
  const page: SheetPage = {
    ...(i > 0 ? { suffix: surface.name } : {}),
    figures: { part: 'drawing' },
    landscape: drawing.orientation === 'landscape',
    ...(drawing.ratio ? { scale: `1:${drawing.ratio}` } : {}),
    data: {
      drawing: drawing.svg,
      bars: drawCheckBars({ id: `set-out-bars-${i + 1}`, label: say('drawing.bars'), system, say }).svg,
      check:
        chalk.check.diagonal > 0
          ? say('sheet.set-out.check', {
              short: length(short),
              long: length(long),
              diagonal: length(chalk.check.diagonal),
            })
          : '',
      first: chalk.firstPiece,
      middle: say('sheet.set-out.middle', { half: length(surface.joint / 2) }),
    },
  };
  return { page, moved: drawing.moved };
}

function figuresPage(
  context: SheetContext,
  surface: PacketSurface,
  i: number,
  moved: readonly MovedSize[],
): SheetPage {
  return {
    suffix: i > 0 ? `${surface.name}-figures` : 'figures',
    figures: { part: 'figures' },
    data: { figures: setOutFigures(context, surface, moved) },
  };
}
