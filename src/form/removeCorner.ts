import { cornersOf } from '../job/sections/walls.ts';
import type { Path } from '../job/shape/Trouble.ts';
import { treeOf } from './fieldValues.ts';
import { keysAt, roomNames } from './roomNames.ts';
import { removeText, renameText } from './setText.ts';

/** The job file without the corner where a wall ends: the wall goes on to the next corner, and what was read at the corner goes. */
export function removeCorner(text: string, floor: Path, wall: string): string {
  const tree = treeOf(text);
  const { walls } = roomNames(tree, floor);
  const next = walls[(walls.indexOf(wall) + 1) % walls.length];
  const [ends, after] = [cornersOf(wall), next === undefined ? undefined : cornersOf(next)];
  if (!ends || !after || walls.length <= 3) return text;
  const corner = ends[1];
  const about = ['diagonals', 'angles', 'corner checks', 'base line'].flatMap((list) =>
    keysAt(tree, [...floor, list])
      .filter((key) => key === corner || cornersOf(key)?.includes(corner))
      .map((key) => [...floor, list, key]),
  );
  const without = about.reduce((rest, path) => removeText(rest, path, floor.length), text);
  const joined = removeText(without, [...floor, 'walls', next!], floor.length + 1);
  return renameText(joined, [...floor, 'walls', wall], `${ends[0]}-${after[1]}`);
}
