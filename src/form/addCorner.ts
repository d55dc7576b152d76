import { cornersOf } from '../job/sections/walls.ts';
import type { Path } from '../job/shape/Trouble.ts';
import { treeOf } from './fieldValues.ts';
import { roomNames } from './roomNames.ts';
import { insertText, renameText } from './setText.ts';

/**
 * A corner's name that is not taken yet: the next letter, after Z with a number behind it.
 *
 * @example
 * freeCorner(['A', 'B', 'C']) //=> 'D'
 */
export function freeCorner(taken: readonly string[]): string {
  const letters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'];
  const names = [...letters, ...letters.map((letter) => `${letter}1`)];
  return names.find((name) => !taken.includes(name)) ?? `A${taken.length}`;
}

/** The job file with a corner put into a wall: its reading stays with the first part, the second part is still to be read. */
export function addCorner(text: string, floor: Path, wall: string): string {
  const tree = treeOf(text);
  const ends = cornersOf(wall);
  if (!ends) return text;
  const corner = freeCorner(roomNames(tree, floor).corners);
  const walls = [...floor, 'walls'];
  const parted = renameText(text, [...walls, wall], `${ends[0]}-${corner}`);
  return insertText(parted, [...walls, `${ends[0]}-${corner}`], `${corner}-${ends[1]}`, null);
}
