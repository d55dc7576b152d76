import type { Point } from '../geometry/index.ts';
import type { ChalkMark } from '../layout/Layout.ts';
import { printLength, type Ticks } from '../measure/index.ts';
import type { PacketEdge, PacketSurface } from '../packet/Packet.ts';
import { type Box, boxOf } from './boxes.ts';
import { chalkLine } from './chalkMarks.ts';
import type { Drawing, DrawOptions } from './Drawing.ts';
import { firstFree } from './firstFree.ts';
import type { LineName } from './lineStyles.ts';
import type { Mark, Spot } from './Mark.ts';
import { nameRequest } from './nameRequest.ts';
import { penSvg } from './penSvg.ts';
import type { Orientation } from './pickScale.ts';
import { pieceArea } from './pieceMarks.ts';
import { placeNames } from './placeNames.ts';
import { cornerLetters, cornersOf, doorWords, obstacleMarks, roomEdges, wallMarks } from './roomMarks.ts';
import { type Scale, toPaper } from './Scale.ts';
import { angleTo, arrowHead, move } from './signs.ts';
import { type Spaces, surfaceScale } from './surfaceScale.ts';
import { type Taken, takenBy } from './takenBy.ts';
import { path, text } from './text.ts';
import { threeFourFive } from './threeFourFive.ts';

export interface SetOutOptions extends DrawOptions {
  readonly space: Spaces;
  /** Step to which running distances are printed, to the nearest; 1/64 in or 0.1 mm unless told otherwise. */
  readonly step?: Ticks;
}

/** Paper round the room for flags and letters, and the distance of the first running size from the wall, in mm. */
const border = 12.5;
const firstSize = 8;
const nextSize = 9;

function faceLine(edge: PacketEdge): LineName {
  if (edge.id.endsWith(':line') || edge.meets === 'doorway') return 'opening';
  return edge.touch ? 'face' : 'hiddenFace';
}

interface Running {
  /** What is written: the corner where the tape is hooked, where it has a letter, and the distance. */
  readonly words: string;
  /** Both ends on the wall's face, the way into the room in radians, and how many sizes lie nearer to the wall. */
  readonly zero: Spot;
  readonly at: Spot;
  readonly inward: number;
  readonly level: number;
}

const distance = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** The point that the tape is hooked on: of the corner and the edge's ends the one that lies at the distance read. */
function zeroOf(mark: ChalkMark, edge: PacketEdge, corner: Point | undefined): Point {
  const miss = (point: Point) => Math.abs(distance(point, mark.at) - mark.distance);
  return [edge.from, edge.to].reduce(
    (best, point) => (miss(point) < miss(best) ? point : best),
    corner ?? edge.from,
  );
}

function runnings(surface: PacketSurface, scale: Scale, { system, step }: SetOutOptions): readonly Running[] {
  const corners = new Map(cornersOf(surface).map(({ name, at }) => [name, at]));
  const walls = new Set(roomEdges(surface));
  const all = surface.chalk.lines.flatMap(({ marks }) => marks);
  return all.flatMap((mark, i) => {
    const edge = surface.edges.find(({ id }) => id === mark.edge);
    if (!edge) return [];
    const along = angleTo(toPaper(scale, edge.from), toPaper(scale, edge.to));
    const corner = corners.get(mark.end);
    const size = printLength(mark.distance, system, { feet: true, ...(step ? { finest: step } : {}) });
    return {
      words: corner ? `${mark.end}: ${size}` : size,
      zero: toPaper(scale, zeroOf(mark, edge, corner)),
      at: toPaper(scale, mark.at),
      // The room lies to the left of its own edges, and to the right of an obstacle's.
      inward: along + (walls.has(edge) ? Math.PI / 2 : -Math.PI / 2),
      level: all.slice(0, i).filter((other) => other.edge === mark.edge).length,
    };
  });
}

/** A running distance inside the wall: a dot at the zero, an arrow at the mark, the size beside the line. */
function runningSize({ words, zero, at, inward, level }: Running, taken: Taken): readonly Mark[] {
  const away = firstSize + level * nextSize;
  const [from, to] = [move(zero, inward, away), move(at, inward, away)];
  const angle = angleTo(from, to);
  const turn = Math.abs(Math.cos(angle)) < 0.3 ? 90 : 0;
  const tries = [3.4, 8, -3.4, 12, -8, 16, 20, -12].flatMap((off) =>
    [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0, 1, 1.1, 1.2, 1.4, 1.8, -0.4].map((share) => {
      const spot: Spot = [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
      return text(move(spot, inward, off), words, { turn, weight: 700, clear: 'all' });
    }),
  );
  return [
    path([move(zero, inward, 1), move(zero, inward, away + 1.5)], 'dimension'),
    { mark: 'circle', centre: from, radius: 1, line: 'slash', fill: 'paper' },
    path([from, to], 'dimension'),
    arrowHead(to, angle),
    firstFree(tries, taken),
  ];
}

/** The first piece to set, drawn where it goes. */
function firstPiece(surface: PacketSurface, scale: Scale): readonly Mark[] {
  const piece = surface.pieces.find(({ id }) => id === surface.chalk.firstPiece);
  if (!piece) return [];
  const { pole } = nameRequest(piece.id, piece.shape, scale);
  return [pieceArea(piece, surface, scale, { line: 'hardPiece' }), text(pole, piece.id, { weight: 700 })];
}

/** Everything but names of obstacles, each layer keeping clear of those before. */
function layers(surface: PacketSurface, scale: Scale, paper: Box, options: SetOutOptions): readonly Mark[] {
  const { system, say } = options;
  const room: readonly Mark[] = [
    ...wallMarks(surface, scale, faceLine),
    ...obstacleMarks(surface, scale),
    ...surface.chalk.lines.flatMap((line) => chalkLine(line, scale)),
    ...cornerLetters(surface, scale),
    ...firstPiece(surface, scale),
  ];
  const circles = surface.obstacles.map(({ ring }) => boxOf(ring.map((point) => toPaper(scale, point))));
  const taken = (marks: readonly Mark[]): Taken => {
    const { boxes, lines } = takenBy(marks, true);
    return { boxes: [...boxes, ...circles], lines, paper };
  };
  const doors = [...room, ...doorWords(surface, scale, say, { ...takenBy(room), paper })];
  const sized = [...doors];
  for (const running of runnings(surface, scale, options)) sized.push(...runningSize(running, taken(sized)));
  return [...sized, ...threeFourFive(surface, scale, system, taken(sized))];
}

/**
 * The set-out of a surface in the room's frame: only the room, heavy where a tape can touch its face, the chalk lines
 * with their flags in snapping order, running distances from one zero, the 3-4-5 check and the first piece.
 */
export function drawSetOut(
  surface: PacketSurface,
  options: SetOutOptions,
): Drawing & { readonly orientation: Orientation } {
  const { scale, orientation, widthMm, heightMm } = surfaceScale(
    surface,
    options.space,
    border,
    options.system,
  );
  const paper = { left: 0, bottom: 0, right: widthMm, top: heightMm };
  const marks = layers(surface, scale, paper, options);
  const things = surface.obstacles.map(({ name, ring }) =>
    nameRequest(name, { outer: ring, holes: [] }, scale),
  );
  const ground = {
    paper,
    outline: surface.outline.map((point) => toPaper(scale, point)),
    taken: takenBy(marks).boxes,
  };
  const names = placeNames(things, ground).marks;
  const frame = { id: options.id, label: options.label, widthMm, heightMm, ratio: scale.ratio };
  return { ...penSvg([...marks, ...names], frame), orientation };
}
