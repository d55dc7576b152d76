import { drawCheckBars, drawSetOut } from '../drawing/index.ts';
import type { ChalkLine } from '../layout/Layout.ts';
import { sawNearest } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { bothSpaces } from './drawingSpace.ts';
import { edgeWords, endWords } from './edgeWords.ts';
import type { Sheet, SheetPage } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';

/** Where do you snap the lines? Marks from faces that a tape can touch, in the order of snapping, and the check. */
export const setOut: Sheet = {
  name: 'set-out',
  for: 'setter',
  bundles: ['crew', 'packet'],
  speaks: 'crew',
  make: (context) => context.packet.surfaces.map((surface, i) => setOutPage(context, surface, i)),
};

/** What stands under the drawing: the lines' marks, the check, and the readings in small print. */
const CHECK_MM = 22;
const LINE_MM = 6;
const MARK_MM = 9;
/** A line of small print holds two readings at least. */
const READINGS_MM = 4.5;

function setOutPage(context: SheetContext, surface: PacketSurface, i: number): SheetPage {
  const { packet, say, length } = context;
  const { system, paper, step } = packet.spec.print;
  const { chalk } = surface;
  const marks = chalk.lines.reduce((sum, line) => sum + Math.max(line.marks.length, 1), 0);
  const below =
    CHECK_MM +
    LINE_MM * chalk.lines.length +
    MARK_MM * marks +
    READINGS_MM * Math.ceil((surface.adjustment.readings.length + 1) / 2);
  const drawing = drawSetOut(surface, {
    id: `set-out-${i + 1}`,
    label: say('sheet.set-out.drawing', { name: surface.name }),
    system,
    say,
    step,
    space: bothSpaces(paper, below),
  });
  const [short, long] = chalk.check.legs;
  return {
    ...(i > 0 ? { suffix: surface.name } : {}),
    landscape: drawing.orientation === 'landscape',
    ...(drawing.ratio ? { scale: `1:${drawing.ratio}` } : {}),
    data: {
      drawing: drawing.svg,
      bars: drawCheckBars({ id: `set-out-bars-${i + 1}`, label: say('drawing.bars'), system, say }).svg,
      lines: chalk.lines.map((line) => lineRow(context, surface, line)),
      check: say('sheet.set-out.check', {
        short: length(short),
        long: length(long),
        diagonal: length(chalk.check.diagonal),
      }),
      first: chalk.firstPiece,
      adjusted: adjustedRows(context, surface),
      noCheck:
        surface.adjustment.redundancy <= 0
          ? say('room.noCheck', { diagonal: surface.adjustment.measureNext ?? '' })
          : '',
    },
  };
}

/** A line with its marks as running distances to the nearest step of the saw, each from the corner where the tape is hooked. */
function lineRow({ say, longLength, packet }: SheetContext, surface: PacketSurface, line: ChalkLine) {
  return {
    name: line.name,
    marks: line.marks.map((mark) => ({
      where: say('sheet.set-out.mark', {
        edge: edgeWords(surface, mark.edge, say),
        end: endWords(surface, mark.end, say),
      }),
      distance: longLength(sawNearest(mark.distance, packet.rounding.step)),
    })),
    squared: line.snappable ? '' : say('sheet.set-out.squared'),
  };
}

/** What the tape said and what the drawing uses, wall by wall. */
function adjustedRows({ longLength, length }: SheetContext, { adjustment }: PacketSurface) {
  return adjustment.readings.map((reading) => ({
    id: reading.id,
    read: reading.read.map((one) => longLength(one)).join(' · '),
    used: longLength(reading.used),
    correction:
      reading.correction === 0 ? '0' : `${reading.correction > 0 ? '+' : ''}${length(reading.correction)}`,
  }));
}
