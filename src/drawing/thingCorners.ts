import type { Point } from '../geometry/index.ts';
import type { PacketEdge, PacketSurface } from '../packet/Packet.ts';
import { cornersOf } from './roomMarks.ts';

/** A corner of what stands in the room, lettered because a tape is hooked there or a mark made on a face beside it. */
export interface ThingCorner {
  readonly letter: string;
  /** What it is a corner of. */
  readonly thing: string;
  readonly at: Point;
}

/** Letters in the order they are given; I and O are left out, as they are read as figures. */
const LETTERS = 'ABCDEFGHJKLMNPQRSTUVWXYZ';

/**
 * The corners of obstacles that the set-out speaks of, with letters that go on after those of the room's corners: both ends of every
 * face that bears a mark. A tape from one end of such a face is told from that of the other by them alone.
 */
export function thingCorners(surface: PacketSurface): readonly ThingCorner[] {
  const taken = new Set(cornersOf(surface).map(({ name }) => name));
  const free = [...LETTERS, ...[...LETTERS].map((one) => `${one}1`)].filter((one) => !taken.has(one));
  const faces = markedFaces(surface);
  const found = surface.obstacles.flatMap(({ name }) => {
    const own = surface.edges.filter(({ id }) => faces.has(id) && id.startsWith(`${name}:`));
    const ends = own.flatMap(({ from, to }) => [from, to]);
    const once = ends.filter((at, i) => ends.findIndex((one) => same(one, at)) === i);
    return once.map((at) => ({ thing: name, at }));
  });
  return found.slice(0, free.length).map((corner, i) => ({ ...corner, letter: free[i]! }));
}

/** The lettered ends of a face, in the order of their letters; of any other edge none. */
export function lettersOfFace(surface: PacketSurface, id: string): readonly ThingCorner[] {
  const edge = surface.edges.find((one) => one.id === id);
  return edge ? thingCorners(surface).filter(({ at }) => isEnd(edge, at)) : [];
}

/** The lettered corner at which a face ends and another begins; none where they do not meet. */
export function cornerBetween(surface: PacketSurface, face: string, other: string): ThingCorner | undefined {
  const beyond = surface.edges.find(({ id }) => id === other);
  return beyond && lettersOfFace(surface, face).find(({ at }) => isEnd(beyond, at));
}

/** The edges that bear a mark of a chalk line or from which one is checked. */
function markedFaces({ chalk }: PacketSurface): ReadonlySet<string> {
  const later = (chalk.later ?? []).flatMap(({ lines }) => lines);
  const lines = [...chalk.lines, ...(chalk.further ?? []), ...later];
  return new Set(
    lines.flatMap(({ marks, offsets }) => [
      ...marks.map(({ edge }) => edge),
      ...(offsets ? [offsets.edge] : []),
    ]),
  );
}

function isEnd({ from, to }: PacketEdge, at: Point): boolean {
  return same(from, at) || same(to, at);
}

function same(p: Point, q: Point): boolean {
  return p[0] === q[0] && p[1] === q[1];
}
