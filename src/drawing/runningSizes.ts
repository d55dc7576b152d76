import { type Point, unitAlong } from '../geometry/index.ts';
import type { ChalkLine, ChalkMark } from '../layout/Layout.ts';
import type { PacketEdge, PacketSurface } from '../packet/Packet.ts';
import { type Box, boxOf, grow, segmentMeets } from './boxes.ts';
import { firstApart } from './firstFree.ts';
import type { Mark, Spot, TextMark } from './Mark.ts';
import { printSize, type SizePrint } from './printSize.ts';
import { cornersOf, roomEdges } from './roomMarks.ts';
import { type Scale, toPaper } from './Scale.ts';
import { angleTo, arrowHead, flag, move } from './signs.ts';
import { type Taken, takenBy } from './takenBy.ts';
import { path, sizes, text } from './text.ts';
import { textBox } from './textBox.ts';
import { textWidth } from './textWidth.ts';
import { cornerBetween } from './thingCorners.ts';

/** A size that found no place: the letter that stands for it, and whose mark it is. */
export interface MovedSize {
  readonly letter: string;
  readonly line: string;
  readonly edge: string;
}

/** Distance of the first running size from its wall, and from one to the next, in mm of paper. */
const firstSize = 8;
const nextSize = 9;

interface Running {
  readonly line: string;
  readonly edge: string;
  /** What is written: the corner where the tape is hooked, where it has a letter, and the distance. */
  readonly words: string;
  /** Both ends on the wall's face, the way into the room in radians, and how many sizes lie nearer to the wall. */
  readonly zero: Spot;
  readonly at: Spot;
  readonly inward: number;
  readonly level: number;
  /** Whether the chalk line runs square to the wall, so that the arrow ends on it. */
  readonly square: boolean;
}

/** Running sizes of the first two lines, each along its wall; one that finds no place is a letter, told beside. */
export function runningSizes(
  surface: PacketSurface,
  scale: Scale,
  print: SizePrint,
  takenWith: (marks: readonly Mark[]) => Taken,
): {
  readonly marks: readonly Mark[];
  readonly moved: readonly MovedSize[];
  /** Where other words would be read as a size of these. */
  readonly beside: readonly Box[];
} {
  const all = runnings(surface, scale, print);
  const walls = surface.edges.map(({ from, to }) => [toPaper(scale, from), toPaper(scale, to)] as const);
  const marks: Mark[] = [];
  const moved: MovedSize[] = [];
  for (const running of all) {
    const others = all.filter((one) => one !== running).flatMap(besideShaft);
    const beside = (taken: Taken) => ({ ...taken, boxes: [...taken.boxes, ...others] });
    const { along, words } = runningSize(running, beside(takenWith(marks)), walls);
    marks.push(...along);
    if (words) {
      marks.push(words);
      continue;
    }
    const letter = LETTERS[moved.length] ?? '';
    marks.push(...lettered(running, letter, beside(takenWith(marks))));
    moved.push({ letter, line: running.line, edge: running.edge });
  }
  return { marks, moved, beside: all.flatMap(besideShaft) };
}

/** Where words of running sizes stand beside their arrows as a rule: what may stand elsewhere leaves it to them. */
export function placesOfSizes(surface: PacketSurface, scale: Scale, print: SizePrint): readonly Box[] {
  return runnings(surface, scale, print)
    .flatMap(besideShaft)
    .map((strip) => grow(strip, WORDS));
}

const LETTERS = 'abcdefghijklm';

function runnings(surface: PacketSurface, scale: Scale, print: SizePrint): readonly Running[] {
  const walls = new Set(roomEdges(surface));
  const letters = new Set(cornersOf(surface).map(({ name }) => name));
  const all = [...surface.chalk.lines]
    .sort((a, b) => Number(a.name) - Number(b.name))
    .flatMap((line: ChalkLine) => line.marks.map((mark) => ({ line, mark })));
  return all.flatMap(({ line, mark }, i) => {
    const edge = surface.edges.find(({ id }) => id === mark.edge);
    if (!edge) return [];
    const along = angleTo(toPaper(scale, edge.from), toPaper(scale, edge.to));
    const size = printSize(mark.distance, print);
    const letter = letters.has(mark.end) ? mark.end : cornerBetween(surface, mark.edge, mark.end)?.letter;
    return {
      line: line.name,
      edge: mark.edge,
      words: letter ? `${letter}: ${size}` : size,
      zero: toPaper(scale, zeroOf(mark, edge, surface)),
      at: toPaper(scale, mark.at),
      // The room lies to the left of its own edges, and to the right of an obstacle's.
      inward: along + (walls.has(edge) ? Math.PI / 2 : -Math.PI / 2),
      level: all.slice(0, i).filter((other) => wallOf(other.mark) === wallOf(mark)).length,
      square: Math.abs(Math.cos(along - angleTo(toPaper(scale, line.from), toPaper(scale, line.to)))) < 0.05,
    };
  });
}

const wallOf = ({ edge }: ChalkMark) => edge.replace(/\.\d+$/, '');

/** The point that the tape begins at: on the side that is told; else the corner or end of the edge that lies at the distance read. */
function zeroOf({ both, end, distance, at }: ChalkMark, edge: PacketEdge, surface: PacketSurface): Point {
  const [ux, uy] = unitAlong(edge.from, edge.to);
  const from = (way: number): Point => [at[0] - way * ux * distance, at[1] - way * uy * distance];
  if (both) return from(both[0].end === end && both[0].distance === distance ? 1 : -1);
  const ends = [
    edge.from,
    edge.to,
    ...cornersOf(surface).flatMap((one) => (one.name === end ? [one.at] : [])),
  ];
  const miss = (point: Point) => Math.min(...ends.map(([x, y]) => Math.hypot(x - point[0], y - point[1])));
  return miss(from(1)) <= miss(from(-1)) ? from(1) : from(-1);
}

/** Words stand right beside their arrow, on either side of it: farther off they are read as those of another. */
const OFFS = [3.4, -3.4];
/** Words nearer to another arrow than this, in mm, are read as its own. */
const ASIDE = 1.6;
/** So far past that reach words beside an arrow, in mm. */
const WORDS = 3.6;
const SHARES = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9, 0, 1];
/** How far past the tip or the beginning of its arrow words in line with it stand, in mm. */
const PAST = [1.5, 3, 5];

/** Both ends of the arrow inside the wall, at its level. */
function shaftOf({ zero, at, inward, level }: Running): readonly [Spot, Spot] {
  const away = firstSize + level * nextSize;
  return [move(zero, inward, away), move(at, inward, away)];
}

/** The strip along an arrow that lies level or upright; one that slants leaves no box to keep clear of. */
function besideShaft(running: Running): readonly Box[] {
  const shaft = shaftOf(running);
  return Math.abs(Math.sin(2 * angleTo(...shaft))) > 0.3 ? [] : [grow(boxOf(shaft), ASIDE)];
}

/** Inside the wall: a dot at the zero, an arrow at the mark, brought out to it where the line slants away, and the size beside the arrow or in line with it where it has a place. */
function runningSize(running: Running, taken: Taken, walls: Taken['lines']) {
  const { words, zero, at, inward, level, square } = running;
  const away = firstSize + level * nextSize;
  const [from, to] = shaftOf(running);
  const angle = angleTo(from, to);
  const turn = Math.abs(Math.cos(angle)) < 0.3 ? 90 : 0;
  const out = (spot: Spot) => path([move(spot, inward, 1), move(spot, inward, away + 1.5)], 'dimension');
  const along: readonly Mark[] = [
    out(zero),
    ...(square ? [] : [out(at)]),
    { mark: 'circle', centre: from, radius: 1, line: 'slash', fill: 'paper' },
    path([from, to], 'dimension'),
    arrowHead(to, angle),
  ];
  const far = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const half = textWidth(words, sizes.note, 700) / 2 + 1;
  const places = [
    ...OFFS.flatMap((off) => SHARES.map((share) => [share * far, off] as const)),
    ...PAST.flatMap((past) => [far + half + past, -half - past].map((by) => [by, 0] as const)),
  ];
  const tries = places.map(([by, off]) =>
    text(move(move(from, angle, by), inward, off), words, { turn, weight: 700, clear: 'all' }),
  );
  const own = takenBy(along);
  return { along, words: firstClear(tries, { ...taken, lines: [...taken.lines, ...own.lines] }, walls) };
}

/** The first of the words that touches nothing, else that breaks no wall and as few chalk lines as may be. */
function firstClear(tries: readonly TextMark[], taken: Taken, walls: Taken['lines']): TextMark | undefined {
  const breaksNone = (one: TextMark) => walls.every(([a, b]) => !segmentMeets(a, b, textBox(one)));
  return firstApart(tries.filter(breaksNone), taken);
}

/** A letter in a circle at the arrow, for a size that stands in the table. */
function lettered(running: Running, letter: string, taken: Taken): readonly Mark[] {
  const [, tip] = shaftOf(running);
  const spots = [4.5, 6, 8].flatMap((by) =>
    [0, 1, 2, 3, 4, 5, 6, 7].map((eighth) => move(tip, (eighth * Math.PI) / 4, by)),
  );
  const free = firstApart(
    spots.map((spot) => text(spot, letter, { weight: 700, clear: 'all' })),
    taken,
  );
  return flag(free?.at ?? tip, letter, 2.6);
}
