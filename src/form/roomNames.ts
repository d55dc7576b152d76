import { cornersOf } from '../job/sections/walls.ts';
import type { Path } from '../job/shape/Trouble.ts';
import { valueAt } from '../job/shape/valueAt.ts';

/** Names of a floor's walls and corners in the order walked, and of its diagonals. */
export interface RoomNames {
  readonly walls: readonly string[];
  readonly corners: readonly string[];
  readonly diagonals: readonly string[];
}

/**
 * The keys of a map in the order written; none where there is no map.
 *
 * @example
 * keysAt({ floor: { walls: { 'A-B': '9 ft' } } }, ['floor', 'walls']) //=> ['A-B']
 */
export function keysAt(tree: unknown, path: Path): readonly string[] {
  const map = valueAt(tree, path);
  return typeof map === 'object' && map !== null && !Array.isArray(map) ? Object.keys(map) : [];
}

/** Every pair of corners that no wall joins, each once, in the order walked. */
function diagonalsOf(corners: readonly string[]): readonly string[] {
  return corners.flatMap((from, i) =>
    corners.flatMap((to, j) =>
      j > i + 1 && !(i === 0 && j === corners.length - 1) ? [`${from}-${to}`] : [],
    ),
  );
}

/**
 * The names of a floor's walls, corners and diagonals.
 *
 * @example
 * roomNames({ floor: { walls: { 'A-B': '', 'B-C': '', 'C-A': '' } } }, ['floor']).corners //=> ['A', 'B', 'C']
 */
export function roomNames(tree: unknown, floor: Path): RoomNames {
  const walls = keysAt(tree, [...floor, 'walls']);
  const corners = walls.flatMap((wall) => cornersOf(wall)?.[0] ?? []);
  return { walls, corners, diagonals: diagonalsOf(corners) };
}

/** Where the floor stands that the form is about: `floor`, or one of `floors`. */
export function floorPath(tree: unknown, wanted?: string): Path {
  const several = keysAt(tree, ['floors']);
  if (keysAt(tree, ['floor']).length > 0 || several.length === 0) return ['floor'];
  return ['floors', wanted !== undefined && several.includes(wanted) ? wanted : several[0]!];
}
