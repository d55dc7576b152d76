import { type Point, rotate } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { Face } from '../frame/Face.ts';
import type { Ground } from '../frame/Ground.ts';
import { MOST_LEAN } from '../start/findRuns.ts';

/** A wall from corner to corner, or one long face of an obstacle, that runs nearly along an axis of the pattern. */
export interface WallLine {
  readonly edge: string;
  readonly seen: Face['seen'];
  readonly length: Ticks;
  /** Axis that it runs along: 0 for x, 1 for y. */
  readonly axis: 0 | 1;
  /** Angle off that axis in radians, counter-clockwise. */
  readonly off: number;
  /** Places of its faces in the list of faces. */
  readonly faces: readonly number[];
}

/**
 * The walls and long faces of a field, longest first; those more than ten degrees off both axes are no tapers but cuts at an angle.
 * The axes are those of the faces, or `turn` radians from them.
 */
export function wallLines(
  { faces, edges }: Pick<Ground, 'faces' | 'edges'>,
  least: Ticks,
  turn = 0,
): WallLine[] {
  const touched = new Set(edges.map(({ face }) => face));
  const groups = new Map<string, number[]>();
  faces.forEach((face, index) => {
    if (face.circle || face.doorway) return;
    const name = /:/.test(face.id) ? face.id : face.name;
    groups.set(name, [...(groups.get(name) ?? []), index]);
  });
  return [...groups]
    .filter(([, own]) => own.some((index) => touched.has(index)))
    .flatMap(([edge, own]) => lineOf(edge, own, faces, turn))
    .filter(({ length }) => length >= least)
    .sort((a, b) => b.length - a.length);
}

function lineOf(edge: string, own: readonly number[], faces: readonly Face[], turn: number): WallLine[] {
  const [first, last] = [faces[own[0]!]!, faces[own.at(-1)!]!];
  const [dx, dy] = rotate(difference(first.from, last.to), -turn);
  const axis = Math.abs(dx) >= Math.abs(dy) ? 0 : 1;
  const lean = axis === 0 ? dy / dx : -dx / dy;
  if (Math.abs(lean) > MOST_LEAN) return [];
  const off = Math.atan(lean) + 0;
  return [{ edge, seen: first.seen, length: Math.round(Math.hypot(dx, dy)), axis, off, faces: own }];
}

function difference(from: Point, to: Point): Point {
  return [to[0] - from[0], to[1] - from[1]];
}
