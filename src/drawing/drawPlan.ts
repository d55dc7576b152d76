import type { Ticks } from '../measure/index.ts';
import type { PacketPiece, PacketSurface } from '../packet/Packet.ts';
import { chalkLine, quarterLetters } from './chalkMarks.ts';
import type { Drawing, DrawOptions } from './Drawing.ts';
import { endCuts } from './endCuts.ts';
import type { Link } from './Link.ts';
import type { Mark, Spot } from './Mark.ts';
import { movementMarks, movementWords } from './movementMarks.ts';
import { nameRequest } from './nameRequest.ts';
import type { PlanParts } from './PlanParts.ts';
import { partNames, partSeams } from './partFrames.ts';
import { penSvg } from './penSvg.ts';
import type { Orientation } from './pickScale.ts';
import { pieceAreas } from './pieceMarks.ts';
import { pieceNames } from './pieceNames.ts';
import { placeNames } from './placeNames.ts';
import { cornerLetters, doorWords, obstacleMarks, wallMarks } from './roomMarks.ts';
import { type Scale, toPaper } from './Scale.ts';
import { seamMarks } from './seamMarks.ts';
import { specks } from './specks.ts';
import { type Spaces, type SurfaceScale, surfaceScale } from './surfaceScale.ts';
import { takenBy } from './takenBy.ts';
import { tileAreas } from './tileAreas.ts';
import { ringOn } from './trueCircle.ts';

/** How a plan is drawn; everything but the pieces can be left off. */
export interface PlanOptions extends DrawOptions {
  readonly space: Spaces;
  /** Saw step to which the end cuts are printed. */
  readonly step: Ticks;
  /** Numbers of the cuts in circles; default false. */
  readonly numbers?: boolean;
  /** Words outside the room: end cuts and doors; default true. A small plan has no place for them. */
  readonly outside?: boolean;
  /** The pages on which parts of the plan stand at a larger scale: drawn with their match lines and the names of the parts in place of those of pieces. */
  readonly parts?: PlanParts;
  /** What a piece leads to on a page that can be tapped; nothing where it leads nowhere. */
  readonly linkOf?: (piece: PacketPiece) => Omit<Link, 'rings'> | undefined;
}

/** A plan, the way its page must lie, and the names for which there was no place. */
export interface PlanDrawing extends Drawing {
  readonly orientation: Orientation;
  /** Names of cut pieces and obstacles that found no place. */
  readonly unnamed: readonly string[];
  /** Whether whole tiles are too small for their names. */
  readonly counted: boolean;
  /** Whether columns and rows are then numbered along the chalk lines. */
  readonly numbered: boolean;
}

/** Paper round the room for sizes and flags, wider where names are led out, in mm. */
const borders = [12.5, 20, 30] as const;
/** Points of the names of parts. */
const partName = 16;

/** What is drawn before names are placed, clear of what will lie over it, and sizes that still need a place. */
function layers(
  surface: PacketSurface,
  { scale, widthMm, heightMm }: SurfaceScale,
  options: PlanOptions,
  over: readonly Mark[] = [],
) {
  const paper = { left: 0, bottom: 0, right: widthMm, top: heightMm };
  const chalk = surface.chalk.lines.flatMap((line) => chalkLine(line, scale));
  const drawn = [
    ...pieceAreas(surface, scale),
    ...tileAreas(surface.pieces, surface, scale),
    ...obstacleMarks(surface, scale),
    ...wallMarks(surface, scale),
    ...movementMarks(surface, scale),
    ...seamMarks(surface, scale),
    ...chalk,
    ...quarterLetters(surface, scale),
    ...cornerLetters(surface, scale, chalk),
  ];
  if (options.outside === false) return { marks: drawn, toLead: [] };
  const doors = doorWords(surface, scale, options.say, { ...takenBy(drawn), paper });
  const ends = endCuts(surface, scale, options, { ...takenBy([...drawn, ...doors]), paper });
  const marks = [...drawn, ...doors, ...ends.marks];
  const taken = { ...takenBy([...marks, ...over]), paper };
  const soft = movementWords(surface, scale, options.say, { box: paper, taken });
  return { marks: [...marks, ...soft], toLead: ends.toLead };
}

function pieceLinks(
  surface: PacketSurface,
  scale: Scale,
  linkOf: NonNullable<PlanOptions['linkOf']>,
): readonly Link[] {
  return surface.pieces.flatMap((piece) => {
    const link = linkOf(piece);
    if (!link) return [];
    const { outer, holes } = piece.whole ? { outer: piece.fullTile, holes: [] } : piece.shape;
    return [{ ...link, rings: [outer, ...holes].map((ring) => ringOn(scale, ring)) }];
  });
}

/** What is named before all else: pieces too small to be found by their look, and what stands in the room. */
const firstNamed = ({ pieces, obstacles }: PacketSurface, scale: Scale): readonly string[] => [
  ...specks(pieces, scale),
  ...obstacles.map(({ name }) => name),
];

/** Names of pieces too small to be found by their look, led out. */
function speckNames(surface: PacketSurface, on: SurfaceScale, marks: readonly Mark[]): readonly Mark[] {
  const { scale, widthMm, heightMm } = on;
  const must = specks(surface.pieces, scale);
  const small = surface.pieces.filter(({ id }) => must.has(id));
  const paper = { left: 0, bottom: 0, right: widthMm, top: heightMm };
  const outline = surface.outline.map((point) => toPaper(scale, point));
  const requests = small.map(({ id, shape }) => nameRequest(id, shape, scale));
  return placeNames(requests, {
    paper,
    outline,
    taken: takenBy(marks).boxes,
    lines: takenBy(marks, true).lines,
    must,
  }).marks;
}

/** The plan with the names of its parts: their pages have the names, but for those of pieces that are hardly seen on it. */
function overviewAt(
  surface: PacketSurface,
  options: PlanOptions,
  on: SurfaceScale,
  parts: PlanParts,
): PlanDrawing {
  const { scale, widthMm, heightMm, orientation } = on;
  const frame = { id: options.id, label: options.label, widthMm, heightMm, ratio: scale.ratio };
  const nameOf = ({ number }: { readonly number: number }) => options.say('drawing.part', { part: number });
  const pages = [...partSeams(parts, scale), ...partNames(parts, scale, partName, nameOf)];
  const { marks } = layers(surface, on, options, pages);
  return {
    ...penSvg([...marks, ...pages, ...speckNames(surface, on, [...marks, ...pages])], frame),
    orientation,
    unnamed: [],
    counted: false,
    numbered: false,
  };
}

function planAt(surface: PacketSurface, options: PlanOptions, on: SurfaceScale): PlanDrawing {
  const { scale, widthMm, heightMm, orientation } = on;
  const { marks, toLead } = layers(surface, on, options);
  const outline: Spot[] = surface.outline.map((point) => toPaper(scale, point));
  const ground = {
    paper: { left: 0, bottom: 0, right: widthMm, top: heightMm },
    outline,
    bare: surface.obstacles.map(({ ring }) => ring.map((point) => toPaper(scale, point))),
    taken: takenBy(marks).boxes,
    lines: takenBy(marks, true).lines,
    // A small plan shows the whole, not each piece.
    must: new Set(options.outside === false ? [] : firstNamed(surface, scale)),
  };
  const numbers = options.numbers ?? false;
  const { requests, counted, numbered } = pieceNames(surface.pieces, scale, numbers, ground);
  const things = surface.obstacles.map(({ name, ring }) =>
    nameRequest(name, { outer: ring, holes: [] }, scale),
  );
  // Where not even whole tiles hold their names, leaders from all cuts would cover a plan as small as that.
  const leads = options.outside !== false || !counted;
  const placed = placeNames([...toLead, ...requests, ...things], { ...ground, leads });
  const frame = { id: options.id, label: options.label, widthMm, heightMm, ratio: scale.ratio };
  const links = options.linkOf ? { links: pieceLinks(surface, scale, options.linkOf) } : {};
  return {
    ...penSvg([...marks, ...placed.marks], { ...frame, ...links }),
    orientation,
    unnamed: placed.unplaced,
    counted,
    numbered,
  };
}

/**
 * The plan of a surface in the room's frame, the first wall at the foot: every piece by its look and name, walls,
 * obstacles, doors, seams, chalk lines with their quarters, and the cuts at the ends of both axes. Where it stands on several
 * pages, this is the one that shows them all.
 */
export function drawPlan(surface: PacketSurface, options: PlanOptions): PlanDrawing {
  const [tight, ...wider] = borders.map((border) =>
    surfaceScale(surface, options.space, border, options.system),
  );
  if (options.parts) return overviewAt(surface, options, tight!, options.parts);
  let best = planAt(surface, options, tight!);
  for (const on of wider) {
    if (best.unnamed.length === 0 || on.scale.ratio !== best.ratio) break;
    const next = planAt(surface, options, on);
    if (next.unnamed.length < best.unnamed.length) best = next;
  }
  return best;
}
