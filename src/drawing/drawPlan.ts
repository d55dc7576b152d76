import type { Ticks } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { chalkLine, quarterLetters } from './chalkMarks.ts';
import type { Drawing, DrawOptions } from './Drawing.ts';
import { endCuts } from './endCuts.ts';
import type { Spot } from './Mark.ts';
import type { NameRequest } from './nameBlock.ts';
import { nameRequest } from './nameRequest.ts';
import { penSvg } from './penSvg.ts';
import type { Orientation } from './pickScale.ts';
import { pieceAreas } from './pieceMarks.ts';
import { notInside, placeNames } from './placeNames.ts';
import { cornerLetters, doorWords, obstacleMarks, wallMarks } from './roomMarks.ts';
import { type Scale, toPaper } from './Scale.ts';
import { seamMarks } from './seamMarks.ts';
import { type Spaces, type SurfaceScale, surfaceScale } from './surfaceScale.ts';
import { takenBy } from './takenBy.ts';

/** How a plan is drawn; everything but the pieces can be left off. */
export interface PlanOptions extends DrawOptions {
  readonly space: Spaces;
  /** Saw step to which the end cuts are printed. */
  readonly step: Ticks;
  /** Numbers of the cuts in circles; default false. */
  readonly numbers?: boolean;
}

/** A plan, the way its page must lie, and the names for which there was no place. */
export interface PlanDrawing extends Drawing {
  readonly orientation: Orientation;
  /** Names of cut pieces and obstacles that found no place. */
  readonly unnamed: readonly string[];
  /** True where whole tiles are too small for their names: then the columns and rows along the chalk lines are numbered. */
  readonly counted: boolean;
}

/** Paper round the room for sizes and flags, wider where names are led out, in mm. */
const borders = [12.5, 18, 25, 32] as const;
/** When more than this share of the whole tiles can't hold its name, the names of whole tiles are left to counting. */
const mostSmall = 0.1;

interface Names {
  readonly pieces: readonly NameRequest[];
  readonly things: readonly NameRequest[];
}

function names(surface: PacketSurface, scale: Scale, numbers: boolean): Names {
  return {
    pieces: surface.pieces.map(({ id, shape, cut }) =>
      nameRequest(id, shape, scale, numbers && cut !== null ? cut : undefined),
    ),
    things: surface.obstacles.map(({ name, ring }) => nameRequest(name, { outer: ring, holes: [] }, scale)),
  };
}

/** The column's number for a piece of the course over the crossing, the row's for one right of it. */
function countOf(id: string): string | undefined {
  const [, quarter, column, row] = /^([KLMN])(\d+)-(\d+)$/.exec(id) ?? [];
  if (row === '1' && (quarter === 'K' || quarter === 'L')) return column;
  return column === '1' && (quarter === 'K' || quarter === 'N') ? row : undefined;
}

/** What is drawn before names are placed, and sizes that still need a place. */
function layers(surface: PacketSurface, { scale, widthMm, heightMm }: SurfaceScale, options: PlanOptions) {
  const paper = { left: 0, bottom: 0, right: widthMm, top: heightMm };
  const drawn = [
    ...pieceAreas(surface, scale),
    ...obstacleMarks(surface, scale),
    ...wallMarks(surface, scale),
    ...seamMarks(surface, scale),
    ...surface.chalk.lines.flatMap((line) => chalkLine(line, scale)),
    ...quarterLetters(surface, scale),
    ...cornerLetters(surface, scale),
  ];
  const doors = doorWords(surface, scale, options.say, { ...takenBy(drawn), paper });
  const ends = endCuts(surface, scale, options, { ...takenBy([...drawn, ...doors]), paper });
  return { marks: [...drawn, ...doors, ...ends.marks], toLead: ends.toLead };
}

/** A whole tile's request in a plan where tiles are counted: its number if it lies along a chalk line. */
function countRequest(request: NameRequest): readonly NameRequest[] {
  const name = countOf(request.name);
  return name === undefined ? [] : [{ ...request, name }];
}

function planAt(surface: PacketSurface, options: PlanOptions, on: SurfaceScale): PlanDrawing {
  const { scale, widthMm, heightMm, orientation } = on;
  const { marks, toLead } = layers(surface, on, options);
  const outline: Spot[] = surface.outline.map((point) => toPaper(scale, point));
  const ground = {
    paper: { left: 0, bottom: 0, right: widthMm, top: heightMm },
    outline,
    taken: takenBy(marks).boxes,
  };
  const { pieces, things } = names(surface, scale, options.numbers ?? false);
  const whole = new Set(surface.pieces.filter((piece) => piece.whole).map(({ id }) => id));
  const small = notInside(
    pieces.filter(({ name }) => whole.has(name)),
    ground,
  ).length;
  const counted = small > mostSmall * whole.size;
  const asked = counted
    ? pieces.flatMap((request) => (whole.has(request.name) ? countRequest(request) : [request]))
    : pieces;
  const placed = placeNames([...toLead, ...asked, ...things], ground);
  const frame = { id: options.id, label: options.label, widthMm, heightMm, ratio: scale.ratio };
  return { ...penSvg([...marks, ...placed.marks], frame), orientation, unnamed: placed.unplaced, counted };
}

/**
 * The plan of a surface in the room's frame, the first wall at the foot: every piece by its look and name, walls,
 * obstacles, doors, seams, chalk lines with their quarters, and the cuts at the ends of both axes.
 */
export function drawPlan(surface: PacketSurface, options: PlanOptions): PlanDrawing {
  const [tight, ...wider] = borders.map((border) =>
    surfaceScale(surface, options.space, border, options.system),
  );
  const first = planAt(surface, options, tight!);
  if (first.unnamed.length === 0) return first;
  const more = wider
    .filter(({ scale }) => scale.ratio === first.ratio)
    .map((on) => planAt(surface, options, on));
  return [first, ...more].reduce((best, one) => (one.unnamed.length < best.unnamed.length ? one : best));
}
