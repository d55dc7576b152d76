import type { PacketPiece, PacketSurface } from '../packet/Packet.ts';
import type { Zone } from '../zones/Zone.ts';
import { type Box, overlap, within } from './boxes.ts';
import type { Drawing, DrawOptions } from './Drawing.ts';
import { kneelOutside, kneelSign, kneelsOutside, type ZoneOnPaper } from './kneelSign.ts';
import type { Mark, Spot } from './Mark.ts';
import { penSvg } from './penSvg.ts';
import { placeNames } from './placeNames.ts';
import { cornerLetters, doorWords } from './roomMarks.ts';
import { toPaper } from './Scale.ts';
import { specks } from './specks.ts';
import { type Spaces, type SurfaceScale, surfaceScale } from './surfaceScale.ts';
import { type Taken, takenBy } from './takenBy.ts';
import { textBox } from './textBox.ts';
import { beginArrow, doorShares, wayOutArrow } from './zoneArrows.ts';
import { shafts, zoneMarks, zonePieces } from './zoneMarks.ts';
import { endsOf, namedWhere, zoneNames } from './zoneNames.ts';

export interface ZoneOptions extends DrawOptions {
  readonly space: Spaces;
  /** Whether all pieces are named, or only those that the zone's words name; default all. */
  readonly names?: 'all' | 'ends';
}

/** A zone's plan; where whole tiles are too small for their names, no name is led out, and tiles that lie in rows are counted. */
export interface ZoneDrawing extends Drawing {
  readonly counted: boolean;
  readonly numbered: boolean;
  /** Pieces whose name, or whose cut's number, found no place; where tiles are counted, of the cut ones only. */
  readonly unnamed: readonly string[];
  /** The cut pieces that bear their name neither themselves nor close by: by it the lists tell the number. */
  readonly aside: readonly string[];
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
/** Less above and below is enough for letters and led names; it is taken where the plan is a scale larger by it. */
const tightBorder: Spot = [14, 11];

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

/** The scale at which a zone is drawn in a space: 24 for 1:24. */
export function zoneRatio(surface: PacketSurface, zone: Zone, options: ZoneOptions): number {
  return zoneScale(surface, zone, options, borders[0]!).scale.ratio;
}

/** Marks without the words that lie off the paper; lines are cut off there by the drawing's edge. */
function onPaper(marks: readonly Mark[], paper: Box): readonly Mark[] {
  return marks.filter((mark) => mark.mark !== 'text' || within(textBox(mark), paper));
}

/**
 * The plan of one zone in the room's frame: its pieces with names and cut numbers, the first outlined heavily with an
 * arrow the way the work goes, the rest of the room empty, a place to kneel, and the way out.
 */
export function drawZone(surface: PacketSurface, zone: Zone, options: ZoneOptions): ZoneDrawing {
  const word = options.say('drawing.kneel');
  const narrow = onBorder(surface, zone, options, { border: borders[0]!, share: doorShares[0] });
  const ground = largerGround(narrow, options, word) ?? roomToKneel(narrow, options, word) ?? narrow;
  return withNames(zone, options, {
    ...ground,
    marks: [...ground.marks, ...kneelSign(ground.on, ground.taken, word)],
  });
}

/** The zone on a tighter border, where its plan is a scale larger by it and the sign to kneel still has its place. */
function largerGround(narrow: Ground, options: ZoneOptions, word: string): Ground | undefined {
  const { surface, zone, scale } = narrow.on;
  if (zoneScale(surface, zone, options, tightBorder).scale.ratio >= scale.ratio) return undefined;
  const ground = onBorder(surface, zone, options, { border: tightBorder, share: doorShares[0] });
  const kneels = !kneelsOutside(ground.on) || kneelOutside(ground.on, ground.taken, word);
  return kneels ? ground : undefined;
}

/** The first border and arrow, at the scale that the narrowest border allows, that leave the sign to kneel a place outside the doorway. */
function roomToKneel(narrow: Ground, options: ZoneOptions, word: string): Ground | undefined {
  const { surface, zone, scale } = narrow.on;
  // Most zones have no such doorway, and of the others most have room at once: what is not asked for is not drawn.
  if (!kneelsOutside(narrow.on)) return undefined;
  for (const border of borders) {
    if (zoneScale(surface, zone, options, border).scale.ratio !== scale.ratio) continue;
    for (const share of doorShares) {
      const ground = onBorder(surface, zone, options, { border, share });
      if (kneelOutside(ground.on, ground.taken, word)) return ground;
    }
  }
  return undefined;
}

/** A zone on paper with a border of its own: all that is drawn before the sign to kneel and the names, and what that takes. */
interface Ground {
  readonly on: ZoneOnPaper;
  readonly paper: Box;
  readonly marks: readonly Mark[];
  readonly taken: Taken;
}

/** The border, and where along the doorway the arrow out of it stands. */
interface Places {
  readonly border: Spot;
  readonly share: number;
}

function onBorder(
  surface: PacketSurface,
  zone: Zone,
  options: ZoneOptions,
  { border, share }: Places,
): Ground {
  const { scale, widthMm, heightMm } = zoneScale(surface, zone, options, border);
  const paper = { left: 0, bottom: 0, right: widthMm, top: heightMm };
  const on = { surface, zone, scale };
  const bare = [...zoneMarks(surface, zone, scale), ...wayOutArrow(surface, zone, scale, share)];
  const taken = (marks: readonly Mark[]) => {
    const { boxes, lines } = takenBy(marks);
    return { boxes: [...boxes, ...shafts(marks)], lines, paper };
  };
  const letters = cornerLetters(surface, scale);
  const words = doorWords(surface, scale, options.say, taken([...bare, ...letters]));
  // On a small plan the words of a doorway are wider than its wall: then letters stand clear of them.
  const hidden = letters.some(
    (letter) => letter.mark === 'text' && words.some((word) => overlap(textBox(word), textBox(letter))),
  );
  const marks = [...bare, ...(hidden ? cornerLetters(surface, scale, words) : letters), ...words];
  return { on, paper, marks, taken: taken(marks) };
}

/** The drawing with the names of the zone's pieces, clear of all its marks, and the arrow where to begin clear of the names. */
function withNames(
  zone: Zone,
  options: ZoneOptions,
  { on, paper, marks }: Omit<Ground, 'taken'>,
): ZoneDrawing {
  const { surface, scale } = on;
  const pieces = zonePieces(surface, zone);
  const ends = endsOf(zone);
  const wanted = options.names === 'ends' ? pieces.filter(({ id }) => ends.includes(id)) : pieces;
  const must = new Set([...ends, ...specks(wanted, scale)]);
  const ground = {
    paper,
    outline: surface.outline.map((point) => toPaper(scale, point)),
    taken: [...takenBy(marks).boxes, ...shafts(marks)],
    lines: takenBy(marks, true).lines,
    must,
  };
  const { requests, counted, numbered } = zoneNames(wanted, zone, scale, ground);
  const names = placeNames(requests, { ...ground, leads: !counted });
  const begin = beginArrow(on, [...ground.taken, ...takenBy(names.marks).boxes]);
  const [widthMm, heightMm] = [paper.right, paper.top];
  const frame = { id: options.id, label: options.label, widthMm, heightMm, ratio: scale.ratio };
  const svg = penSvg([...onPaper(marks, paper), ...begin, ...names.marks], frame);
  const isTold = (piece: PacketPiece) => counted && piece.whole && !must.has(piece.id);
  const all = options.names !== 'ends';
  return { ...svg, counted: counted && all, numbered: numbered && all, ...namedWhere(pieces, names, isTold) };
}
