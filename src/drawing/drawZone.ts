import type { PacketPiece, PacketSurface } from '../packet/Packet.ts';
import type { Zone } from '../zones/Zone.ts';
import { type Box, within } from './boxes.ts';
import type { Drawing, DrawOptions } from './Drawing.ts';
import { kneelOutside, kneelSign, spotOf, type ZoneOnPaper } from './kneelSign.ts';
import type { Mark, Spot } from './Mark.ts';
import { markBounds } from './markBounds.ts';
import { movementMarks } from './movementMarks.ts';
import { penSvg } from './penSvg.ts';
import { hardCutsOf, lookOf, pieceArea } from './pieceMarks.ts';
import { pieceNames } from './pieceNames.ts';
import { placeNames } from './placeNames.ts';
import { cornerLetters, doorLine, doorWords, obstacleMarks, wallMarks } from './roomMarks.ts';
import { type Scale, toPaper } from './Scale.ts';
import { seamMarks } from './seamMarks.ts';
import { angleTo, arrow, move } from './signs.ts';
import { type Spaces, type SurfaceScale, surfaceScale } from './surfaceScale.ts';
import { type Taken, takenBy } from './takenBy.ts';
import { textBox } from './textBox.ts';
import { tileAreas } from './tileAreas.ts';

export interface ZoneOptions extends DrawOptions {
  readonly space: Spaces;
}

/** A zone's plan; where whole tiles are too small for their names, no name is led out, and tiles that lie in rows are counted. */
export interface ZoneDrawing extends Drawing {
  readonly counted: boolean;
  readonly numbered: boolean;
}

/**
 * Room outside the walls, left and right and above and below, in mm of paper; a wider one where the sign to kneel would else find no
 * place outside the doorway.
 */
const borders: readonly Spot[] = [
  [14, 14],
  [20, 14],
  [14, 20],
  [20, 20],
];
const distance = (a: Spot, b: Spot) => Math.hypot(a[0] - b[0], a[1] - b[1]);
/** Length of the arrows in mm. */
const shaft = 11;

/** An arrow through the doorway by which the zone is left. */
function wayOut(surface: PacketSurface, zone: Zone, scale: Scale): readonly Mark[] {
  const line = zone.wayOut === undefined ? undefined : doorLine(surface, zone.wayOut, scale);
  if (!line) return [];
  const [from, to] = line;
  const at = move(from, angleTo(from, to), distance(from, to) / 2);
  const out = angleTo(from, to) - Math.PI / 2;
  return arrow(move(at, out, -shaft * 0.6), move(at, out, shaft * 0.4));
}

/** Where to begin and which way to work. */
function beginMarks({ surface, zone, scale }: ZoneOnPaper): readonly Mark[] {
  const [start, end] = [zone.first, zone.last].map((id) => spotOf(surface, id, scale));
  if (!start || !end) return [];
  const begin: Spot = [start[0], start[1] - 3];
  const reach = Math.min(shaft, distance(begin, end));
  return reach > 4 ? arrow(begin, move(begin, angleTo(begin, end), reach)) : [];
}

/** The scale of the whole room, or of the zone with its way out where that can be drawn larger. */
function zoneScale(
  surface: PacketSurface,
  zone: Zone,
  { space, system }: ZoneOptions,
  border: Spot,
): SurfaceScale {
  const own = new Set(zone.pieces);
  const pieces = surface.pieces.filter(({ id }) => own.has(id)).flatMap(({ shape }) => shape.outer);
  const door = surface.edges
    .filter(({ id }) => id === `${zone.wayOut}:line`)
    .flatMap(({ from, to }) => [from, to]);
  const [x, y] = surface.pieces.find(({ id }) => id === zone.last)?.shape.outer[0] ?? [0, 0];
  const away = ({ shape }: PacketPiece) => Math.hypot(shape.outer[0]![0] - x, shape.outer[0]![1] - y);
  const bare = surface.pieces
    .filter((piece) => piece.zone > zone.number && piece.share > 0.5)
    .sort((a, b) => away(a) - away(b))
    .slice(0, 1)
    .flatMap(({ shape }) => shape.outer);
  const room = surfaceScale(surface, space, border, system);
  if (pieces.length === 0) return room;
  const close = surfaceScale(surface, space, border, system, [...pieces, ...door, ...bare]);
  return close.scale.ratio < room.scale.ratio ? close : room;
}

/** Marks without the words that lie off the paper; lines are cut off there by the drawing's edge. */
function onPaper(marks: readonly Mark[], paper: Box): readonly Mark[] {
  return marks.filter((mark) => mark.mark !== 'text' || within(textBox(mark), paper));
}

/** Boxes of the arrows' shafts, so that no name is written over them. */
function shafts(marks: readonly Mark[]): readonly Box[] {
  const thick = marks.filter((mark) => mark.mark === 'path' && mark.line === 'thick');
  return thick.map((mark) => markBounds([mark]));
}

/**
 * The plan of one zone in the room's frame: its pieces with names and cut numbers, the first outlined heavily with an
 * arrow the way the work goes, the rest of the room empty, a place to kneel, and the way out.
 */
export function drawZone(surface: PacketSurface, zone: Zone, options: ZoneOptions): ZoneDrawing {
  const grounds = borders.map((border) => onBorder(surface, zone, options, border));
  const narrow = grounds[0]!;
  const word = options.say('drawing.kneel');
  const fits = ({ on, taken }: Ground) =>
    on.scale.ratio === narrow.on.scale.ratio && kneelOutside(on, taken, word) !== undefined;
  const ground = grounds.find(fits) ?? narrow;
  return withNames(zone, options, {
    ...ground,
    marks: [...ground.marks, ...kneelSign(ground.on, ground.taken, word)],
  });
}

/** A zone on paper with a border of its own: all that is drawn before the sign to kneel and the names, and what that takes. */
interface Ground {
  readonly on: ZoneOnPaper;
  readonly paper: Box;
  readonly marks: readonly Mark[];
  readonly taken: Taken;
}

const ownPieces = ({ pieces }: PacketSurface, zone: Zone): readonly PacketPiece[] => {
  const own = new Set(zone.pieces);
  return pieces.filter(({ id }) => own.has(id));
};

function onBorder(surface: PacketSurface, zone: Zone, options: ZoneOptions, border: Spot): Ground {
  const { scale, widthMm, heightMm } = zoneScale(surface, zone, options, border);
  const paper = { left: 0, bottom: 0, right: widthMm, top: heightMm };
  const on = { surface, zone, scale };
  const pieces = ownPieces(surface, zone);
  const hard = hardCutsOf(surface);
  const drawn: readonly Mark[] = [
    ...pieces.map((piece) => pieceArea(piece, surface, scale, lookOf(piece, hard))),
    ...tileAreas(pieces, surface, scale),
    ...pieces
      .filter(({ id }) => id === zone.first)
      .map((piece) => pieceArea(piece, surface, scale, { line: 'thick' })),
    ...obstacleMarks(surface, scale),
    ...wallMarks(surface, scale),
    ...movementMarks(surface, scale),
    ...seamMarks(surface, scale),
    ...cornerLetters(surface, scale),
    ...beginMarks(on),
    ...wayOut(surface, zone, scale),
  ];
  const marks = [...drawn, ...doorWords(surface, scale, options.say, { ...takenBy(drawn), paper })];
  return { on, paper, marks, taken: { ...takenBy(marks), paper } };
}

/** The drawing with the names of the zone's pieces, clear of all its marks. */
function withNames(
  zone: Zone,
  options: ZoneOptions,
  { on, paper, marks }: Omit<Ground, 'taken'>,
): ZoneDrawing {
  const { surface, scale } = on;
  const ground = {
    paper,
    outline: surface.outline.map((point) => toPaper(scale, point)),
    taken: [...takenBy(marks).boxes, ...shafts(marks)],
  };
  const { requests, counted, numbered } = pieceNames(ownPieces(surface, zone), scale, true, ground);
  const bold = new Set([zone.first, zone.last]);
  const named = requests.map((request) => (bold.has(request.name) ? { ...request, bold: true } : request));
  const names = placeNames(named, { ...ground, leads: !counted }).marks;
  const [widthMm, heightMm] = [paper.right, paper.top];
  const frame = { id: options.id, label: options.label, widthMm, heightMm, ratio: scale.ratio };
  return { ...penSvg([...onPaper(marks, paper), ...names], frame), counted, numbered };
}
