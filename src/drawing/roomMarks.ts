import type { Point } from '../geometry/index.ts';
import type { PacketEdge, PacketSurface } from '../packet/Packet.ts';
import { boxRound, overlap } from './boxes.ts';
import type { Say } from './Drawing.ts';
import { firstApart, firstFree } from './firstFree.ts';
import type { LineName } from './lineStyles.ts';
import type { Mark, Spot, TextMark } from './Mark.ts';
import { ontoPaper } from './ontoPaper.ts';
import { lengthOn, type Scale, toPaper } from './Scale.ts';
import { angleTo, move } from './signs.ts';
import { type Taken, takenBy } from './takenBy.ts';
import { path, sizes, text } from './text.ts';
import { ringOn } from './trueCircle.ts';

const fixtures = new Set(['cabinet', 'tub', 'island', 'post', 'column', 'hearth', 'stair', 'casing', 'jamb']);

const isDoorLine = (edge: PacketEdge) => edge.id.endsWith(':line') || edge.meets === 'doorway';
const isObstacle = (edge: PacketEdge, surface: PacketSurface) =>
  surface.obstacles.some(({ name }) => edge.id.startsWith(`${name}:`));

/** The edges of the room itself: walls, what stands along them, and doors. */
export function roomEdges(surface: PacketSurface): readonly PacketEdge[] {
  return surface.edges.filter((edge) => !isObstacle(edge, surface));
}

function edgeLine(edge: PacketEdge): LineName {
  if (isDoorLine(edge)) return 'opening';
  return fixtures.has(edge.meets) ? 'fixture' : 'wall';
}

/** Walls, fixtures along them and open door lines, each in its own line. */
export function wallMarks(
  surface: PacketSurface,
  scale: Scale,
  lineOf: (edge: PacketEdge) => LineName = edgeLine,
): readonly Mark[] {
  return roomEdges(surface).map((edge) =>
    path([toPaper(scale, edge.from), toPaper(scale, edge.to)], lineOf(edge)),
  );
}

/** Obstacles as they stand, a circle by its true arc; the folds of a floor that falls to a drain. */
export function obstacleMarks(surface: PacketSurface, scale: Scale): readonly Mark[] {
  const folds = surface.falls?.folds ?? [];
  const standing = surface.obstacles.map(
    ({ ring, circle }): Mark =>
      circle
        ? {
            mark: 'circle',
            centre: toPaper(scale, circle.centre),
            radius: lengthOn(scale, circle.radius),
            line: 'fixture',
          }
        : { mark: 'area', rings: [ringOn(scale, ring)], line: 'fixture' },
  );
  return [
    ...folds.map(({ from, to }) => path([toPaper(scale, from), toPaper(scale, to)], 'fold')),
    ...standing,
  ];
}

/** A corner of the room: its name, where it stands, and the walls that meet there, the one that ends there first. */
interface Corner {
  readonly name: string;
  readonly at: Point;
  readonly walls: readonly PacketEdge[];
}

/** The corners of the room: the first letter of an edge `A-B` is its `from`. */
export function cornersOf(surface: PacketSurface): readonly Corner[] {
  return surface.edges.flatMap((edge) => {
    const found = /^([^-:.]+)-[^-:.]+$/.exec(edge.id);
    const [x, y] = edge.from;
    const before = roomEdges(surface).filter(({ to }) => to[0] === x && to[1] === y);
    return found ? [{ name: found[1]!, at: edge.from, walls: [...before, edge] }] : [];
  });
}

/** Straight out of a corner, between its walls, in radians on the paper: the room lies to their left. */
function outOf({ walls }: Corner, scale: Scale): number {
  const outs = walls.map(({ from, to }) => angleTo(toPaper(scale, from), toPaper(scale, to)) - Math.PI / 2);
  const sum = (of: (angle: number) => number) => outs.reduce((all, angle) => all + of(angle), 0);
  return Math.atan2(sum(Math.sin), sum(Math.cos));
}

/** Turns from straight out, in radians, by which a corner's letter may stand clear of what is there, the least first. */
const letterTurns = [0, 0.6, -0.6, 1.2, -1.2];

/** Letters of the corners, outside the room; where something is there already, beside it. */
export function cornerLetters(
  surface: PacketSurface,
  scale: Scale,
  there: readonly Mark[] = [],
): readonly Mark[] {
  return cornersOf(surface).map((corner) => {
    const spot = toPaper(scale, corner.at);
    const out = outOf(corner, scale);
    const tries = letterTurns.map((turn) =>
      text(move(spot, out + turn, 4.5), corner.name, { size: sizes.note, weight: 700 }),
    );
    return firstApart(tries, { boxes: takenBy(there).boxes, lines: [] }) ?? tries[0]!;
  });
}

/** The closed-door line of an opening on the paper, walked with the room on the left. */
export function doorLine(
  surface: PacketSurface,
  name: string,
  scale: Scale,
): readonly [Spot, Spot] | undefined {
  const edge = surface.edges.find(({ id }) => id === `${name}:line`);
  return edge && [toPaper(scale, edge.from), toPaper(scale, edge.to)];
}

/** How far the name of a doorway is moved along its wall to stand clear, in mm, the least first. */
const doorShifts = [0, -3, 3, -6, 6, -10, 10, -16, 16, -24, 24, -34, 34, -45, 45];

/** The name of each doorway and what lies beyond, outside the line of the closed door and clear of what is there. */
export function doorWords(surface: PacketSurface, scale: Scale, say: Say, taken: Taken): readonly TextMark[] {
  return surface.openings.flatMap(({ name, beyond }) => {
    const line = doorLine(surface, name, scale);
    if (!line) return [];
    const [from, to] = line;
    const out = angleTo(from, to) - Math.PI / 2;
    const turn = Math.abs(Math.cos(out)) > 0.7 ? 90 : 0;
    const words = say('drawing.door', { name, beyond });
    const middle = move(from, angleTo(from, to), Math.hypot(to[0] - from[0], to[1] - from[1]) / 2);
    // A page that shows a part of the room names the doorways of that part.
    if (taken.paper && !overlap(boxRound(middle, 1, 1), taken.paper)) return [];
    const tries = [4, 9, 11].flatMap((off) =>
      doorShifts.map((shift) => {
        const at = move(move(middle, out, off), angleTo(from, to), shift);
        const mark = text(at, words, { size: sizes.name, turn });
        return taken.paper ? ontoPaper(mark, taken.paper) : mark;
      }),
    );
    return firstFree(tries, taken);
  });
}
