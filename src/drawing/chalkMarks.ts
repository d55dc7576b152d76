import type { ChalkLine } from '../layout/Layout.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { type Box, boxOf, boxRound, grow, overlap, within } from './boxes.ts';
import type { Mark, Spot } from './Mark.ts';
import { lengthOn, type Scale, toPaper } from './Scale.ts';
import { angleTo, flag, move } from './signs.ts';
import { clipSegment } from './template/clipSegment.ts';
import { path, sizes, text } from './text.ts';

/** A chalk line runs this far past the wall, and a flag's radius, in mm of paper. */
const runPast = 6;
const flagRadius = 3;

/** A chalk line from wall to wall and a little past, with its flag at both ends. */
export function chalkLine(line: ChalkLine, scale: Scale): readonly Mark[] {
  return chalkBetween(toPaper(scale, line.from), toPaper(scale, line.to), line.name);
}

/** What a page shows past its match lines, in mm, and what lies off it. */
export interface PageEdge {
  readonly box: Box;
  readonly overhang: number;
  readonly paper: Box;
}

/**
 * The parts of chalk lines that lie in a box: with flags where they end at a wall, and where they only leave the page, with one out past what the
 * page shows there, clear of other flags. A line that has its flag at a wall needs none there.
 */
export function chalkLinesIn(lines: readonly ChalkLine[], scale: Scale, page: PageEdge): readonly Mark[] {
  const parts = lines.flatMap((line) => {
    const whole = [toPaper(scale, line.from), toPaper(scale, line.to)] as const;
    const part = clipSegment(...whole, page.box);
    return part ? [{ part, whole, name: line.name }] : [];
  });
  const flagged: Spot[] = [];
  const isClear = ([x, y]: Spot) =>
    flagged.every(([u, v]) => Math.hypot(x - u, y - v) > 2 * flagRadius + flagGap) &&
    within(boxRound([x, y], 2 * flagRadius, 2 * flagRadius), page.paper);
  return parts
    .sort((a, b) => lengthOf(b.part) - lengthOf(a.part))
    .flatMap(({ part, whole, name }) => {
      const ends = flagSpots(...part);
      const atWalls = [0, 1].flatMap((i) => (isNear(part[i]!, whole[i]!) ? [ends[i]!] : []));
      const past = atWalls.length > 0 ? [] : spotsPast(part, page).filter(isClear).slice(0, 1);
      flagged.push(...atWalls, ...past);
      return [
        pastWalls(...part),
        ...past.map((spot) => path([nearer(part, spot), spot], 'chalk')),
        ...[...atWalls, ...past].flatMap((spot) => flag(spot, name, flagRadius)),
      ];
    });
}

const flagGap = 1;
const isNear = (a: Spot, b: Spot) => Math.hypot(a[0] - b[0], a[1] - b[1]) < 0.05;

function nearer([a, b]: readonly [Spot, Spot], [x, y]: Spot): Spot {
  return Math.hypot(a[0] - x, a[1] - y) < Math.hypot(b[0] - x, b[1] - y) ? a : b;
}

/** Where a line runs on out of a page at either end: the first spots at which a flag lies off what the page shows. */
function spotsPast([from, to]: readonly [Spot, Spot], { box, overhang }: PageEdge): readonly Spot[] {
  const shown = grow(box, overhang + 0.5);
  const angle = angleTo(from, to);
  return [
    { end: to, way: angle },
    { end: from, way: angle + Math.PI },
  ].flatMap(({ end, way }) =>
    [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]
      .map((by) => move(end, way, overhang + flagRadius + by))
      .filter((spot) => !overlap(boxRound(spot, 2 * flagRadius, 2 * flagRadius), shown)),
  );
}

function lengthOf([from, to]: readonly [Spot, Spot]): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1]);
}

function pastWalls(from: Spot, to: Spot): Mark {
  const angle = angleTo(from, to);
  return path([move(from, angle, -runPast), move(to, angle, runPast)], 'chalk');
}

function flagSpots(from: Spot, to: Spot): readonly [Spot, Spot] {
  const angle = angleTo(from, to);
  return [move(from, angle, -runPast - flagRadius), move(to, angle, runPast + flagRadius)];
}

function chalkBetween(from: Spot, to: Spot, name: string): readonly Mark[] {
  return [pastWalls(from, to), ...flagSpots(from, to).flatMap((spot) => flag(spot, name, flagRadius))];
}

/** On smaller tiles, in mm of paper, the letters would stand where the names belong. */
const leastTile = 14;

/** Letters of the four quarters round the crossing, by which pieces are named. */
export function quarterLetters(surface: PacketSurface, scale: Scale): readonly Mark[] {
  const ring = surface.pattern.tiles[0]?.ring ?? [];
  const box = boxOf(ring);
  const least = lengthOn(scale, Math.min(box.right - box.left, box.top - box.bottom));
  if (least < leastTile) return [];
  const crossing = toPaper(scale, surface.chalk.crossing);
  const eighth = (surface.turn * Math.PI) / 180 + Math.PI / 4;
  return ['K', 'L', 'M', 'N'].map((letter, i) => {
    const at: Spot = move(crossing, eighth + (i * Math.PI) / 2, 4);
    return text(at, letter, { size: sizes.note, weight: 700 });
  });
}
