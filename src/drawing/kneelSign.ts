import type { PacketPiece, PacketSurface } from '../packet/Packet.ts';
import type { Zone } from '../zones/Zone.ts';
import { boxOf, boxRound, corners, overlap, segmentMeets, within } from './boxes.ts';
import { inRings } from './inRings.ts';
import type { Mark, Spot } from './Mark.ts';
import { markBounds } from './markBounds.ts';
import { nameRequest } from './nameRequest.ts';
import { doorLine } from './roomMarks.ts';
import { type Scale, toPaper } from './Scale.ts';
import { angleTo, boxedSize, boxedWord, move } from './signs.ts';
import type { Taken } from './takenBy.ts';
import { sizes, text } from './text.ts';
import { textWidth } from './textWidth.ts';

/** A zone of a surface at the scale of its drawing. */
export interface ZoneOnPaper {
  readonly surface: PacketSurface;
  readonly zone: Zone;
  readonly scale: Scale;
}

/** Two knees and a word where to kneel at the end of a zone: outside the doorway for the last one, else on bare floor. */
export function kneelSign(on: ZoneOnPaper, taken: Taken, word: string): readonly Mark[] {
  const end = spotOf(on.surface, on.zone.last, on.scale);
  if (!end || !taken.paper) return [];
  const inside = () => kneelMarks(kneelSpot(on, taken, end, word), word);
  return kneelOutside(on, taken, word) ?? inside();
}

/** Two knees side by side, with a word under them. */
function kneelMarks(at: Spot, word: string): readonly Mark[] {
  const knees = [-2, 2].map((dx) => knee([at[0] + dx, at[1] + 3.6]));
  return [...knees, ...boxedWord([at[0], at[1] - 0.6], word)];
}

/** The room that the sign takes at least, in mm, and what it keeps off lines and words. */
const kneel = { wide: 22, high: 10, off: 0.8 };

/** Kneel on a bare part of the floor beside the last piece, off the zone's own pieces if there is room, or where none is bare, on those. */
function kneelSpot(
  { surface, zone, scale }: ZoneOnPaper,
  { boxes, lines, paper }: Taken,
  last: Spot,
  word: string,
): Spot {
  const outline = surface.outline.map((point) => toPaper(scale, point));
  const spots = (wanted: (piece: PacketPiece) => boolean) =>
    surface.pieces
      .filter((piece) => piece.share > 0.5 && wanted(piece))
      .map((piece) => poleOf(piece, scale))
      .sort((a, b) => distance(a, last) - distance(b, last));
  const bare = spots((piece) => piece.zone > zone.number);
  const all = bare.length > 0 ? bare : spots((piece) => piece.zone === zone.number);
  const standing = surface.obstacles.flatMap(({ ring }) => {
    const spots = ring.map((point) => toPaper(scale, point));
    return spots.map((spot, i) => [spot, spots[(i + 1) % spots.length]!] as const);
  });
  const wide = Math.max(kneel.wide, boxedSize(word)[0] + 2 * kneel.off);
  const sign = (at: Spot) => boxRound(at, wide, kneel.high);
  const roomy = all.filter(
    (at) =>
      corners(sign(at)).every((corner) => inRings(corner, [outline])) &&
      (!paper || within(sign(at), paper)) &&
      !boxes.some((box) => overlap(sign(at), box, 0)) &&
      ![...lines, ...standing].some(([a, b]) => segmentMeets(a, b, sign(at))),
  );
  const own = surface.pieces
    .filter((piece) => piece.zone === zone.number)
    .map(({ shape }) => boxOf(shape.outer.map((point) => toPaper(scale, point))));
  const clear = roomy.find((at) => !own.some((box) => overlap(sign(at), box, 0)));
  return clear ?? roomy[0] ?? all[0] ?? last;
}

/** Where the word and the knees stand outside a doorway: from its middle and off its line, in mm. */
interface PlaceOutside {
  readonly word: Spot;
  readonly knees: Spot;
}

const KNEES = 2;
/** How far two knees reach to both sides, and off whose line they touch it, in mm. */
const reach = 3.6;
const byLine = 3;
/** How far the sign may be moved along the doorway where it stands past its words, in mm. */
const slides = [0, 10, -10, 20, -20, 30, -30];

/**
 * The knees by the line and the word past them, then both in a row past the words of the doorway. Knees kneel in the opening: in front of
 * its wall nobody passes, and only where no other place is free do they stand there.
 */
function placesOutside(half: number, wide: number): readonly PlaceOutside[] {
  const [beside, past] = [half + 3, 15];
  const apart = half + reach + 1.5;
  const spots = [0, wide / 4, -wide / 4, 6, -6, beside, -beside, past, -past];
  const places: readonly PlaceOutside[] = [
    { word: [beside, 7.5], knees: [beside, byLine] },
    { word: [-beside, 7.5], knees: [-beside, byLine] },
    ...[7.5, 10.5, 13.5].flatMap((off) =>
      spots.flatMap((by) => [by, 0].map((at): PlaceOutside => ({ word: [at, off], knees: [by, byLine] }))),
    ),
    ...spots.flatMap((by) =>
      [1, -1].map((side): PlaceOutside => ({ word: [by + side * apart, byLine], knees: [by, byLine] })),
    ),
    ...[7.5, 9, 10.5, 13.5].flatMap((off) =>
      slides.map((by): PlaceOutside => ({ word: [by + reach, off], knees: [by + reach - apart, off] })),
    ),
  ];
  const isIn = ({ knees }: PlaceOutside) => Math.abs(knees[0]) + reach <= wide / 2;
  return [...places.filter(isIn), ...places.filter((place) => !isIn(place))];
}

/** Whether there is a doorway to kneel outside of: no floor is left bare, and the zone is left by it. */
export function kneelsOutside({ surface, zone, scale }: ZoneOnPaper): boolean {
  const line = zone.wayOut === undefined ? undefined : doorLine(surface, zone.wayOut, scale);
  return line !== undefined && !surface.pieces.some((piece) => piece.zone > zone.number);
}

/**
 * Outside the doorway, beside the arrow: who sets the last zone kneels there at the end, and a sign on the zone's own
 * pieces would cover their names. Undefined where the paper has no room for it.
 */
export function kneelOutside(
  { surface, zone, scale }: ZoneOnPaper,
  { boxes, paper }: Taken,
  word: string,
): readonly Mark[] | undefined {
  const line = zone.wayOut === undefined ? undefined : doorLine(surface, zone.wayOut, scale);
  if (!line || !paper || surface.pieces.some((piece) => piece.zone > zone.number)) return undefined;
  const [from, to] = line;
  const along = angleTo(from, to);
  const out = along - Math.PI / 2;
  const turn = Math.abs(Math.cos(out)) > 0.7 ? 90 : 0;
  const middle = move(from, along, distance(from, to) / 2);
  const at = ([by, off]: Spot) => move(move(middle, along, by), out, off);
  const signs = placesOutside(textWidth(word, sizes.note) / 2, distance(from, to)).map(
    ({ word: spot, knees }): readonly Mark[] => [
      ...[-2, 2].map((by) => knee(at([knees[0] + by, knees[1]]))),
      text(at(spot), word, { turn, clear: 'none' }),
    ],
  );
  const isFree = (marks: readonly Mark[]) => !boxes.some((box) => overlap(markBounds(marks), box, 0.3));
  // Nothing passes between the knees either.
  return signs.find(
    (marks) =>
      within(markBounds(marks), paper) && isFree(marks.slice(0, KNEES)) && isFree(marks.slice(KNEES)),
  );
}

function knee(centre: Spot): Mark {
  return { mark: 'circle', centre, radius: 1.6, line: 'thick', fill: 'paper' };
}

/** The middle of a piece on the paper, by its name. */
export function spotOf(surface: PacketSurface, id: string, scale: Scale): Spot | undefined {
  const piece = surface.pieces.find((one) => one.id === id);
  return piece && poleOf(piece, scale);
}

const poleOf = (piece: PacketPiece, scale: Scale): Spot => nameRequest(piece.id, piece.shape, scale).pole;
const distance = (a: Spot, b: Spot) => Math.hypot(a[0] - b[0], a[1] - b[1]);
