import { distancePointSegment, lineThroughShape, type Point, type Shape } from '../geometry/index.ts';
import { laidEnds } from '../layout/start/laidEnds.ts';
import { otherCourses } from '../layout/start/otherCourses.ts';
import { type Notation, printLength, sawShare, type Ticks } from '../measure/index.ts';
import type { PacketEdge, PacketSurface } from '../packet/Packet.ts';
import { type Box, boxOf, within } from './boxes.ts';
import type { Say } from './Drawing.ts';
import { firstApart } from './firstFree.ts';
import type { Mark, Spot } from './Mark.ts';
import type { NameRequest } from './nameBlock.ts';
import { direction, type Scale, toPaper } from './Scale.ts';
import { move } from './signs.ts';
import { type Taken, takenBy } from './takenBy.ts';
import { sizes, text } from './text.ts';
import { textWidth } from './textWidth.ts';

/** Length and width of the pattern's first tile along the frame's axes. */
function tileSize(surface: PacketSurface): readonly [number, number] {
  const ring = surface.pattern.tiles[0]?.ring ?? [];
  const range = (values: number[]) => Math.max(...values) - Math.min(...values);
  return [range(ring.map(([x]) => x)), range(ring.map(([, y]) => y))];
}

/** Where a ray from the crossing leaves some shapes for good. */
function leaves(crossing: Point, shapes: readonly Shape[], towards: Point): Point {
  const spans = shapes.flatMap((shape) => lineThroughShape(shape, crossing, towards));
  const t = Math.max(0, ...spans.map(({ to }) => to));
  return [crossing[0] + towards[0] * t, crossing[1] + towards[1] * t];
}

/**
 * The cut that a chalk line ends in where the run from which the floor was started tells nothing of it: at a curved wall, and where that
 * run ended at something that stands in the room; undefined where the run's own end is this one.
 */
function cutOnLine(
  surface: PacketSurface,
  edge: PacketEdge | undefined,
  towards: Point,
  size: Ticks,
): Ticks | undefined {
  if (!edge) return undefined;
  const { pattern, joint, chalk, field, start } = surface;
  const axis = towards[0] === 0 ? 1 : 0;
  const at = Math.round(leaves(chalk.crossing, field, towards)[axis]) - widened(surface, axis, towards);
  const run = { low: at, high: at, lowFace: 0, highFace: 0 };
  const { tiles } = pattern;
  const ends = laidEnds(run, { tiles, joint }, axis, start.chosen.origin[axis], [edge]);
  const onLine = ends[towards[axis] > 0 ? 1 : 0];
  // A run is read somewhere along its wall, which may lean: so far its end may be off what the line finds.
  const lean = Math.abs(edge.to[axis] - edge.from[axis]) + ROUNDING;
  return edge.arc || apart(onLine, size, tileSize(surface)[axis] + joint) > lean ? onLine : undefined;
}

/** Rounding moves an end of a run, and the line that is laid over it, by so few ticks. */
const ROUNDING: Ticks = 8;

/** How far two ends of a run differ, whichever of them is counted from the joint before it. */
function apart(one: Ticks, other: Ticks, module: Ticks): Ticks {
  const off = Math.abs(one - other) % module;
  return Math.min(off, module - off);
}

/** How far soft joints that are laid wide move what lies at an end of an axis: none of them lies before its low end. */
function widened({ movement, joint }: PacketSurface, axis: 0 | 1, towards: Point): Ticks {
  if (!movement?.laid || towards[axis] < 0) return 0;
  const own = movement.lines.filter((line) => (line.axis === 'along' ? 0 : 1) === axis);
  return own.reduce((sum, { width }) => sum + width - joint, 0);
}

/** Distance of the words from the wall, in mm of paper. */
const off = 4;
/** How far words may slide along the wall to find room, in mm. */
const slides = [0, 4, 8, 12, 18, 24, 32];
/** And past a doorway, whose words and line take the wall beside the chalk line. */
const farSlides = [42, 52, 62, 72];

interface EndCut {
  /** What is said of it: of the course on the line and the smallest of the others where there is room for both, else of the smaller one. */
  readonly words: string;
  readonly short: string;
  /** Where the axis leaves the room, and the way it points there, in degrees on the paper. */
  readonly wall: Spot;
  readonly towards: number;
}

/** A wall that leans by more than this from square, as a sine, cuts its tiles aslant: where the line ends tells no size of a cut. */
const aslant = 0.2;

function isAslant(edge: PacketEdge | undefined, towards: Point): boolean {
  if (!edge || edge.arc) return false;
  const [dx, dy] = [edge.to[0] - edge.from[0], edge.to[1] - edge.from[1]];
  return Math.abs(dx * towards[0] + dy * towards[1]) > aslant * Math.hypot(dx, dy);
}

function ends(surface: PacketSurface, scale: Scale, print: EndCutPrint): readonly EndCut[] {
  const [length, width] = tileSize(surface);
  const { along, across } = surface.start.chosen.ends;
  const all = [
    { size: along[1], of: length, turn: 0 },
    { size: across[1], of: width, turn: 90 },
    { size: along[0], of: length, turn: 180 },
    { size: across[0], of: width, turn: 270 },
  ].map((one) => atWall(surface, one));
  const [high, , low] = all.map(({ size, spare }) => size + spare) as [Ticks, Ticks, Ticks, Ticks];
  const others = otherCourses(surface.pattern, surface.joint, [low, high]);
  return all.flatMap(({ of, turn, size, wall, edge }) => {
    if (isAslant(edge, direction(turn))) return [];
    const other = turn === 0 ? others[1] : turn === 180 ? others[0] : undefined;
    const cuts = other === undefined || edge?.arc ? [size] : [size, other];
    return {
      words: cuts.map((cut) => cutWords(cut, of, print)).join(' / '),
      short: cutWords(Math.min(...cuts), of, print),
      wall: toPaper(scale, wall),
      towards: turn + scale.turn,
    };
  });
}

/** Where an axis leaves the room, and the size of the cut it ends in there. */
function atWall<End extends { readonly size: Ticks; readonly turn: number }>(
  surface: PacketSurface,
  end: End,
) {
  const towards = direction(end.turn);
  const wall = leaves(surface.chalk.crossing, [{ outer: surface.outline, holes: [] }], towards);
  const edge = surface.edges.find(({ from, to }) => distancePointSegment(wall, from, to) < 1);
  const size = cutOnLine(surface, edge, towards, end.size) ?? end.size;
  const axis = towards[0] === 0 ? 1 : 0;
  const isWhole = Math.abs(size - tileSize(surface)[axis]) <= ROUNDING;
  return { ...end, wall, edge, size, spare: isWhole ? spareAt(surface, axis, towards) : 0 };
}

/** How much more than a whole tile at the end of an axis there is room for before the gap: the tile of other courses is cut to reach as far. */
function spareAt(surface: PacketSurface, axis: 0 | 1, towards: Point): Ticks {
  const { chalk, field, start, joint } = surface;
  const at = Math.round(leaves(chalk.crossing, field, towards)[axis]) - widened(surface, axis, towards);
  const size = tileSize(surface)[axis];
  const [module, origin] = [size + joint, start.chosen.origin[axis]];
  const out = towards[axis] > 0 ? at - origin - size : origin - at;
  return out - Math.round(out / module) * module;
}

function cutWords(size: Ticks, of: Ticks, print: EndCutPrint): string {
  const { saw, percent } = sawShare(size, of, print.step);
  return print.say('drawing.endCut', { size: printLength(saw, print), percent });
}

/** How end cuts are put into words. */
export interface EndCutPrint extends Notation {
  readonly step: Ticks;
  readonly say: Say;
}

/** The pieces at the ends of both axes, outside the wall they meet: size and share of a tile; of those that end in a box, if given. */
export function endCuts(
  surface: PacketSurface,
  scale: Scale,
  print: EndCutPrint,
  taken: Taken,
  box?: Box,
): { readonly marks: readonly Mark[]; readonly toLead: readonly NameRequest[] } {
  const all = ends(surface, scale, print).filter(({ wall }) => !box || within(boxOf([wall]), box));
  const level = surface.turn % 90 === 0;
  const marks: Mark[] = [];
  for (const end of level ? all : []) {
    const around = { ...taken, boxes: [...taken.boxes, ...takenBy(marks).boxes] };
    const mark = beside(end, end.words, around) ?? beside(end, end.short, around);
    if (mark) marks.push(mark);
  }
  const toLead = level ? [] : all.map(({ short, wall }) => ({ name: short, rings: [], pole: wall }));
  return { marks, toLead };
}

/** Words along the wall, beside the chalk line that leaves the room at the same spot; none where a short wall has no place for them. */
function beside({ wall, towards }: EndCut, words: string, taken: Taken): Mark | undefined {
  const [outX, outY] = direction(towards);
  const out = Math.atan2(outY, outX);
  const shift = textWidth(words, sizes.note) / 2 + 4;
  const places = [slides, farSlides].flatMap((some) =>
    [off, 2.25 * off].flatMap((away) =>
      some.flatMap((by) => [shift + by, -shift - by].map((along) => ({ away, along }))),
    ),
  );
  const tries = places.map(({ away, along }) =>
    text(move(move(wall, out, away), out - Math.PI / 2, along), words, { turn: outX === 0 ? 0 : 90 }),
  );
  return firstApart(tries, taken);
}
