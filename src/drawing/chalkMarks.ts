import type { ChalkLine } from '../layout/Layout.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { type Box, boxOf } from './boxes.ts';
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

/**
 * The parts of chalk lines that lie in a box, drawn on as at a wall where they leave it. Where two leave it at one spot
 * only the line that is longer there has its flag.
 */
export function chalkLinesIn(lines: readonly ChalkLine[], scale: Scale, box: Box): readonly Mark[] {
  const parts = lines.flatMap((line) => {
    const part = clipSegment(toPaper(scale, line.from), toPaper(scale, line.to), box);
    return part ? [{ part, name: line.name }] : [];
  });
  const flagged: Spot[] = [];
  return parts
    .sort((a, b) => lengthOf(b.part) - lengthOf(a.part))
    .flatMap(({ part, name }) => {
      const ends = flagSpots(...part).filter(
        ([x, y]) => !flagged.some(([u, v]) => Math.hypot(x - u, y - v) < 2 * flagRadius),
      );
      flagged.push(...ends);
      return [pastWalls(...part), ...ends.flatMap((end) => flag(end, name, flagRadius))];
    });
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
