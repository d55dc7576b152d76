import type { ChalkMark } from '../layout/Layout.ts';
import { printLength, type System } from '../measure/index.ts';
import type { PacketEdge, PacketSurface } from '../packet/Packet.ts';
import { boxOf } from './boxes.ts';
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
import { cornerLetters, cornersOf, doorWords, obstacleMarks, wallMarks } from './roomMarks.ts';
import { type Scale, toPaper } from './Scale.ts';
import { angleTo, arrowHead, move } from './signs.ts';
import { type Spaces, surfaceScale } from './surfaceScale.ts';
import { type Taken, takenBy } from './takenBy.ts';
import { path, text } from './text.ts';
import { threeFourFive } from './threeFourFive.ts';

export interface SetOutOptions extends DrawOptions {
  readonly space: Spaces;
}

/** Paper round the room for flags and letters, and the distance of the first running size from the wall, in mm. */
const border = 16;
const firstSize = 5;
const nextSize = 9;

function faceLine(edge: PacketEdge): LineName {
  if (edge.id.endsWith(':line') || edge.meets === 'doorway') return 'opening';
  return edge.touch ? 'face' : 'hiddenFace';
}

interface Running {
  readonly mark: ChalkMark;
  /** Both ends on the wall's face, the way into the room in radians, and how many sizes lie nearer to the wall. */
  readonly zero: Spot;
  readonly at: Spot;
  readonly inward: number;
  readonly level: number;
}

function runnings(surface: PacketSurface, scale: Scale): readonly Running[] {
  const corners = cornersOf(surface);
  const all = surface.chalk.lines.flatMap(({ marks }) => marks);
  return all.flatMap((mark, i) => {
    const edge = surface.edges.find(({ id }) => id === mark.edge);
    if (!edge) return [];
    const inward = angleTo(toPaper(scale, edge.from), toPaper(scale, edge.to)) + Math.PI / 2;
    const corner = corners.find(({ name }) => name === mark.end);
    return {
      mark,
      zero: toPaper(scale, corner?.at ?? edge.from),
      at: toPaper(scale, mark.at),
      inward,
      level: all.slice(0, i).filter((other) => other.edge === mark.edge).length,
    };
  });
}

/** A running distance inside the wall: a dot at the zero, an arrow at the mark, the size beside the line. */
function runningSize(
  { mark, zero, at, inward, level }: Running,
  system: System,
  taken: Taken,
): readonly Mark[] {
  const away = firstSize + level * nextSize;
  const [from, to] = [move(zero, inward, away), move(at, inward, away)];
  const angle = angleTo(from, to);
  const turn = Math.abs(Math.cos(angle)) < 0.3 ? 90 : 0;
  const words = `${mark.end}: ${printLength(mark.distance, system, { feet: true })}`;
  const tries = [0.5, 0.35, 0.65, 0.2, 0.8].map((share) => {
    const spot: Spot = [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
    return text(move(spot, inward, 3.4), words, { turn, weight: 700, clear: 'all' });
  });
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
function layers(surface: PacketSurface, scale: Scale, options: SetOutOptions): readonly Mark[] {
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
    return { boxes: [...boxes, ...circles], lines };
  };
  const doors = [...room, ...doorWords(surface, scale, say, takenBy(room))];
  const sized = [...doors];
  for (const running of runnings(surface, scale)) sized.push(...runningSize(running, system, taken(sized)));
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
  const marks = layers(surface, scale, options);
  const things = surface.obstacles.map(({ name, ring }) =>
    nameRequest(name, { outer: ring, holes: [] }, scale),
  );
  const ground = {
    paper: { left: 0, bottom: 0, right: widthMm, top: heightMm },
    outline: surface.outline.map((point) => toPaper(scale, point)),
    taken: takenBy(marks).boxes,
  };
  const names = placeNames(things, ground).marks;
  const frame = { id: options.id, label: options.label, widthMm, heightMm, ratio: scale.ratio };
  return { ...penSvg([...marks, ...names], frame), orientation };
}
