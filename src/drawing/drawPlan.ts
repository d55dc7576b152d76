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
import { placeNames } from './placeNames.ts';
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
  readonly unnamed: readonly string[];
}

/** Paper round the room for sizes and flags, wider where names are led out, in mm. */
const borders = [16, 24, 32] as const;
function names(surface: PacketSurface, scale: Scale, numbers: boolean): readonly NameRequest[] {
  const pieces = surface.pieces.map(({ id, shape, cut }) =>
    nameRequest(id, shape, scale, numbers && cut !== null ? cut : undefined),
  );
  const things = surface.obstacles.map(({ name, ring }) =>
    nameRequest(name, { outer: ring, holes: [] }, scale),
  );
  return [...pieces, ...things];
}

/** What is drawn before names are placed, and sizes that still need a place. */
function layers(surface: PacketSurface, scale: Scale, options: PlanOptions) {
  const drawn = [
    ...pieceAreas(surface, scale),
    ...obstacleMarks(surface, scale),
    ...wallMarks(surface, scale),
    ...seamMarks(surface, scale),
    ...surface.chalk.lines.flatMap((line) => chalkLine(line, scale)),
    ...quarterLetters(surface, scale),
    ...cornerLetters(surface, scale),
  ];
  const doors = doorWords(surface, scale, options.say, takenBy(drawn));
  const ends = endCuts(surface, scale, options, takenBy([...drawn, ...doors]));
  return { marks: [...drawn, ...doors, ...ends.marks], toLead: ends.toLead };
}

function planAt(surface: PacketSurface, options: PlanOptions, on: SurfaceScale): PlanDrawing {
  const { scale, widthMm, heightMm, orientation } = on;
  const { marks, toLead } = layers(surface, scale, options);
  const outline: Spot[] = surface.outline.map((point) => toPaper(scale, point));
  const ground = {
    paper: { left: 0, bottom: 0, right: widthMm, top: heightMm },
    outline,
    taken: takenBy(marks).boxes,
  };
  const placed = placeNames([...toLead, ...names(surface, scale, options.numbers ?? false)], ground);
  const frame = { id: options.id, label: options.label, widthMm, heightMm, ratio: scale.ratio };
  return { ...penSvg([...marks, ...placed.marks], frame), orientation, unnamed: placed.unplaced };
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
