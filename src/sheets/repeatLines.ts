import type { Point } from '../geometry/index.ts';
import { sawNearest, type Ticks } from '../measure/index.ts';
import type { PacketPiece, PacketSurface } from '../packet/Packet.ts';
import type { SheetContext } from './SheetContext.ts';

/** So many repeats each way are looked through for one that runs straight along an axis. */
const REACH = 6;
/** A repeat off its axis by no more than rounding is on it, in ticks. */
const ROUNDING = 2;
/** A check over more repeats is no truer. */
const MOST = 10;

/**
 * What a tape checks where tiles lie in no courses, so that no row adds up: how far it is from a tile to one that lies alike, so many
 * on, along the lines of the pattern and square to them; where more courses lie between than such tiles, how many. Empty where tiles lie in courses.
 */
export function repeatLines(
  { say, longLength, packet }: SheetContext,
  { chalk, pattern, pieces }: PacketSurface,
): string[] {
  if (!chalk.guide) return [];
  const zigzag = chalk.corners ? zigzagRepeats(pattern) : undefined;
  const ways = zigzag
    ? [['zigzag', zigzag[0]] as const, ['square', zigzag[1]] as const]
    : [['along', repeatAlong(0, pattern)] as const, ['across', repeatAlong(1, pattern)] as const];
  const isThere = alikeAt(pieces);
  const checks = ways.flatMap(([way, repeat]) => {
    const counts = repeat ? Array.from({ length: MOST }, (_, i) => MOST - i) : [];
    const count = counts.find((n) => isThere([n * repeat![0], n * repeat![1]]));
    if (!repeat || !count) return [];
    const sum = longLength(sawNearest(Math.round(count * Math.hypot(...repeat)), packet.rounding.step));
    const long = count * Math.hypot(...repeat);
    const courses = zigzag ? 0 : coursesIn(long, chalk.poles?.find(({ axis }) => axis === way)?.module);
    return say('sheet.set-out.repeat', { way, count, sum, courses: courses > count ? courses : 0 });
  });
  return checks.length > 0 ? [say('sheet.set-out.repeats', { checks: checks.join('; ') })] : [];
}

/** How many courses a length takes, as a story pole counts them; 0 where it ends within one. */
function coursesIn(long: Ticks, module: Ticks | undefined): number {
  if (module === undefined) return 0;
  const courses = Math.round(long / module);
  return Math.abs(courses * module - long) <= courses * ROUNDING ? courses : 0;
}

type Repeats = Pick<PacketSurface['pattern'], 'a' | 'b'>;

/** Both repeats of a zigzag where they are square to each other, the one along it first: it is the shorter. */
function zigzagRepeats({ a, b }: Repeats): readonly [Point, Point] | undefined {
  const [one, other] = [Math.hypot(...a), Math.hypot(...b)];
  const isSquare = Math.abs(a[0] * b[0] + a[1] * b[1]) <= ROUNDING * Math.max(one, other);
  if (!isSquare) return undefined;
  return one <= other ? [a, b] : [b, a];
}

/** The shortest way from a tile to one that lies alike straight along an axis; undefined where the pattern has none within reach. */
function repeatAlong(axis: 0 | 1, { a, b }: Repeats): Point | undefined {
  const steps = Array.from({ length: 2 * REACH + 1 }, (_, i) => i - REACH);
  const straight = steps.flatMap((i) =>
    steps.flatMap((j): Point[] => {
      const [x, y] = [i * a[0] + j * b[0], i * a[1] + j * b[1]];
      const [on, off] = axis === 0 ? [x, y] : [y, x];
      return on > ROUNDING && Math.abs(off) <= ROUNDING ? [[x, y]] : [];
    }),
  );
  return straight.sort((one, other) => one[axis] - other[axis])[0];
}

/** Tiles are told apart by where they lie to this, in ticks: far less than a joint, far more than rounding. */
const CELL = 64;

/** Whether somewhere on the floor two whole tiles lie alike, one so far from the other. */
function alikeAt(pieces: readonly PacketPiece[]): (by: Point) => boolean {
  const whole = pieces.filter((piece) => piece.whole && !piece.border);
  const key = ({ tile, quarter }: PacketPiece, x: number, y: number) => `${tile} ${quarter} ${x} ${y}`;
  const cell = (at: number) => Math.round(at / CELL);
  const places = new Set(
    whole.map((piece) => key(piece, cell(piece.fullTile[0]![0]), cell(piece.fullTile[0]![1]))),
  );
  const near = [-1, 0, 1];
  return ([dx, dy]) =>
    whole.some((piece) => {
      const [x, y] = [cell(piece.fullTile[0]![0] + dx), cell(piece.fullTile[0]![1] + dy)];
      return near.some((i) => near.some((j) => places.has(key(piece, x + i, y + j))));
    });
}
