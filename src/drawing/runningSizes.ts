import { type Point, unitAlong } from '../geometry/index.ts';
import type { ChalkLine, ChalkMark } from '../layout/Layout.ts';
import type { PacketEdge, PacketSurface } from '../packet/Packet.ts';
import { firstApart } from './firstFree.ts';
import type { Mark, Spot } from './Mark.ts';
import { printSize, type SizePrint } from './printSize.ts';
import { cornersOf, roomEdges } from './roomMarks.ts';
import { type Scale, toPaper } from './Scale.ts';
import { angleTo, arrowHead, flag, move } from './signs.ts';
import { type Taken, takenBy } from './takenBy.ts';
import { path, text } from './text.ts';

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
}

/** Running sizes of the first two lines, each along its wall; one that finds no place is a letter, told beside. */
export function runningSizes(
  surface: PacketSurface,
  scale: Scale,
  print: SizePrint,
  takenWith: (marks: readonly Mark[]) => Taken,
): { readonly marks: readonly Mark[]; readonly moved: readonly MovedSize[] } {
  const marks: Mark[] = [];
  const moved: MovedSize[] = [];
  for (const running of runnings(surface, scale, print)) {
    const { along, words } = runningSize(running, takenWith(marks));
    marks.push(...along);
    if (words) {
      marks.push(words);
      continue;
    }
    const letter = LETTERS[moved.length] ?? '';
    marks.push(...lettered(running, letter, takenWith(marks)));
    moved.push({ letter, line: running.line, edge: running.edge });
  }
  return { marks, moved };
}

const LETTERS = 'abcdefghijklm';

function runnings(surface: PacketSurface, scale: Scale, print: SizePrint): readonly Running[] {
  const walls = new Set(roomEdges(surface));
  const letters = new Set(cornersOf(surface).map(({ name }) => name));
  const all = [...surface.chalk.lines]
    .sort((a, b) => Number(a.name) - Number(b.name))
    .flatMap(({ name, marks }: ChalkLine) => marks.map((mark) => ({ name, mark })));
  return all.flatMap(({ name, mark }, i) => {
    const edge = surface.edges.find(({ id }) => id === mark.edge);
    if (!edge) return [];
    const along = angleTo(toPaper(scale, edge.from), toPaper(scale, edge.to));
    const size = printSize(mark.distance, print);
    return {
      line: name,
      edge: mark.edge,
      words: letters.has(mark.end) ? `${mark.end}: ${size}` : size,
      zero: toPaper(scale, zeroOf(mark, edge, surface)),
      at: toPaper(scale, mark.at),
      // The room lies to the left of its own edges, and to the right of an obstacle's.
      inward: along + (walls.has(edge) ? Math.PI / 2 : -Math.PI / 2),
      level: all.slice(0, i).filter((other) => wallOf(other.mark) === wallOf(mark)).length,
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

const OFFS = [3.4, -3.4, 8, -8, 12, -12, 16, 20, 24];
const SHARES = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9, 0, 1, 1.1, 1.2, 1.4, 1.8, -0.2, -0.4];
/** Sizes drawn shorter than this, in mm of paper, and how far from their beginning their words may stand as well. */
const SHORT = 10;
const PAST = [10, -10, 14, -14, 18, -18];

/** Inside the wall: a dot at the zero, an arrow at the mark, and the size beside the line where it has a place. */
function runningSize({ words, zero, at, inward, level }: Running, taken: Taken) {
  const away = firstSize + level * nextSize;
  const [from, to] = [move(zero, inward, away), move(at, inward, away)];
  const angle = angleTo(from, to);
  const turn = Math.abs(Math.cos(angle)) < 0.3 ? 90 : 0;
  const along: readonly Mark[] = [
    path([move(zero, inward, 1), move(zero, inward, away + 1.5)], 'dimension'),
    { mark: 'circle', centre: from, radius: 1, line: 'slash', fill: 'paper' },
    path([from, to], 'dimension'),
    arrowHead(to, angle),
  ];
  const far = Math.hypot(to[0] - from[0], to[1] - from[1]);
  // Shares of a short size hardly move its words: they may stand past it too.
  const places = [...SHARES.map((share) => share * far), ...(far < SHORT ? PAST : [])];
  const tries = OFFS.flatMap((off) =>
    places.map((by) =>
      text(move(move(from, angle, by), inward, off), words, { turn, weight: 700, clear: 'all' }),
    ),
  );
  const own = takenBy(along);
  return { along, words: firstApart(tries, { ...taken, lines: [...taken.lines, ...own.lines] }) };
}

/** A letter in a circle at the arrow, for a size that stands in the table. */
function lettered({ at, inward, level }: Running, letter: string, taken: Taken): readonly Mark[] {
  const from = move(at, inward, firstSize + level * nextSize);
  const spots = [5, 8, 11, 14, 18].flatMap((by) =>
    [0, 1, 2, 3, 4, 5, 6, 7].map((eighth) => move(from, (eighth * Math.PI) / 4, by)),
  );
  const free = firstApart(
    spots.map((spot) => text(spot, letter, { weight: 700, clear: 'all' })),
    taken,
  );
  return flag(free?.at ?? from, letter, 2.6);
}
