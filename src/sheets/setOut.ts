import { drawCheckBars, drawSetOut } from '../drawing/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { asFirstSay } from './asFirstSay.ts';
import { asSaid } from './asSaid.ts';
import { asTaped } from './asTaped.ts';
import { coursesSay } from './coursesSay.ts';
import { bothSpaces, drawingSpace } from './drawingSpace.ts';
import { figuresApart, LAST_LINES } from './figuresApart.ts';
import { linesOnSoftJoints } from './linesOnSoftJoints.ts';
import { nearestOf } from './nearestOf.ts';
import { readAgain } from './readAgain.ts';
import type { Sheet, SheetPage } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayKind } from './sayKind.ts';
import { setOutFigures } from './setOutFigures.ts';
import { setOutWordsMm } from './setOutWordsMm.ts';
import { tileKey } from './tileKey.ts';

/** Where do you snap the lines? A drawing as large as its page holds; the figures of every mark follow, on that page or the next. */
export const setOut: Sheet = {
  name: 'set-out',
  for: 'setter',
  bundles: ['crew', 'packet'],
  speaks: 'crew',
  make: (context) => context.packet.surfaces.map((surface, i) => setOutPage(context, surface, i)),
};

/** Room for the words that stop a line from being snapped, in two languages, in mm. */
const AGAIN_MM = 10;

function setOutPage(context: SheetContext, surface: PacketSurface, i: number): SheetPage {
  const { packet, say, longLength, units } = context;
  const { paper, step } = packet.spec.print;
  const { chalk } = surface;
  const again = readAgain(context, surface).length > 0;
  const first = surface.pieces.filter(({ id }) => id === chalk.firstPiece);
  const tiles = tileKey(context, surface, first, `set-out-${i + 1}`);
  const [short, long] = chalk.check.legs;
  const legs = {
    short: longLength(short),
    long: longLength(long),
    diagonal: longLength(chalk.check.diagonal),
  };
  const words = {
    check: chalk.check.diagonal > 0 ? say('sheet.set-out.check', legs) : '',
    first: [
      say(`sheet.set-out.${isSetLater(surface) ? 'lineUp' : 'first'}`),
      chalk.firstPiece,
      ...tiles.map(({ name }) => name),
    ].join(' '),
    middle: [linesSay(context, surface), ...foldsSay(context, surface)].join(' '),
  };
  const below = setOutWordsMm(words, drawingSpace(paper, 'portrait', 0).widthMm);
  const drawing = drawSetOut(asSaid(context, surface), {
    id: `set-out-${i + 1}`,
    label: say('sheet.set-out.drawing', { name: surface.name }),
    ...units,
    say,
    step,
    space: bothSpaces(paper, below + (again ? AGAIN_MM : 0)),
  });
  const figures = setOutFigures(context, surface, drawing.moved);
  const where = figuresApart(figures, { ...drawing, belowMm: below }, paper, drawing.orientation);
  return {
    floor: surface.name,
    landscape: drawing.orientation === 'landscape',
    ...(drawing.ratio ? { scale: `1:${drawing.ratio}` } : {}),
    data: {
      drawing: drawing.svg,
      bars: drawCheckBars({ id: `set-out-bars-${i + 1}`, label: say('drawing.bars'), ...units, say }).svg,
      again,
      check: words.check,
      shut: isSetLater(surface),
      first: chalk.firstPiece,
      tiles,
      middle: words.middle,
      apart: where === 'apart',
      through: where === 'through',
      ...figures,
      ...(where === 'on' ? partedLines(figures.lines) : { last: [] }),
    },
  };
}

/** Where the figures run over several pages, the last lines stay with what follows: a page for that alone is a page too many. */
function partedLines<T>(lines: readonly T[]): { readonly lines: readonly T[]; readonly last: readonly T[] } {
  const first = lines.length > 2 * LAST_LINES ? lines.length - LAST_LINES : lines.length;
  return { lines: lines.slice(0, first), last: lines.slice(first) };
}

/** Whether other tile is set before the one by which the floor is lined up, as that would shut it off or stand in its way. */
function isSetLater({ zones: [zone], chalk }: PacketSurface): boolean {
  return zone?.beyond !== undefined && zone.first === chalk.firstPiece;
}

/** What the lines are to the tiles: on joints, or beside the first tile, which is then set by its distance from both. */
function linesSay(context: SheetContext, surface: PacketSurface): string {
  const { chalk, joint } = surface;
  const { say, length } = context;
  const half = length(joint / 2);
  const middle = [
    say('sheet.set-out.middle', { half }),
    ...linesOnSoftJoints(context, surface),
    ...coursesSay(context, surface),
  ].join(' ');
  const [upright, level] = chalk.lines;
  if (!chalk.guide || !upright || !level) return middle;
  const ring = surface.pieces.find(({ id }) => id === chalk.firstPiece)?.shape.outer ?? [];
  const first = say('sheet.set-out.firstAt', {
    shut: isSetLater(surface) ? 'yes' : 'no',
    toUpright: nearestOf(ring, [upright.from, upright.to]),
    toLevel: nearestOf(ring, [level.from, level.to]),
    tile: chalk.firstPiece,
    along: length(asTaped(context, chalk.guide.along)),
    upright: upright.name,
    across: length(asTaped(context, chalk.guide.across)),
    level: level.name,
  });
  return [
    chalk.guide.onJoints ? middle : say('sheet.set-out.guide'),
    first,
    ...(chalk.corners || chalk.guide.onJoints ? [] : asFirstSay(context, surface)),
    ...cornersSay(context, surface),
  ].join(' ');
}

/** The folds of a floor that falls to a drain, which are snapped too. */
function foldsSay({ say }: SheetContext, { falls, obstacles }: PacketSurface): string[] {
  if (!falls || falls.folds.length === 0) return [];
  const corners = falls.folds.map(({ corner }) => corner);
  const round = obstacles.some(({ name, circle }) => name === falls.drain && circle);
  const figures = {
    drain: sayKind(say, falls.drain),
    corners: corners.join(', '),
    count: corners.length,
    round: round ? 'yes' : 'no',
  };
  return [say('sheet.set-out.folds', { ...figures, cut: falls.cut ? 'yes' : 'no' })];
}

/** Which lines follow the zigzag, and what stands on them: corners of tiles that lie along the pattern's axes, as the first does or K1-1. */
function cornersSay(context: SheetContext, { chalk, pieces }: PacketSurface): string[] {
  const { say, length, longLength } = context;
  const { corners, further = [], firstPiece } = chalk;
  if (!corners || further.length === 0) return [];
  const lines = further.map(({ name }) => name).join(', ');
  const { apart, every } = corners;
  const lies = pieces.some(({ id, quarter }) => id === firstPiece && quarter === 0);
  const like = lies ? firstPiece : (pieces.find(({ quarter }) => quarter === 0)?.id ?? firstPiece);
  const figures = { lines, count: further.length, tile: like };
  return [
    say('sheet.set-out.corners', {
      ...figures,
      apart: longLength(asTaped(context, apart)),
      every: length(every),
    }),
  ];
}
