import type { DoorwaySpec, InlaySpec, ObstacleSpec, WallSpec } from '../Job.ts';
import { likelyFigures } from '../shape/likely.ts';
import type { Path } from '../shape/Trouble.ts';
import { type Notes, trouble } from './Notes.ts';

/** Finds a name in a list: as written, then without regard to capitals, then a wall read from its other end. */
export function findName(name: string, names: readonly string[]): string | undefined {
  const given = name.trim().replace(/ *- */g, '-');
  const lower = given.toLowerCase();
  const turned = lower.split('-').reverse().join('-');
  return (
    names.find((candidate) => candidate === given) ??
    names.find((candidate) => candidate.toLowerCase() === lower) ??
    names.find((candidate) => candidate.toLowerCase() === turned)
  );
}

/** The full name of a wall, or a problem and the name as given. */
export function wallName(
  name: string,
  walls: readonly WallSpec[],
  path: Path,
  notes: Notes,
  atKey = false,
): string {
  const names = walls.map(({ id }) => id);
  const found = findName(name, names);
  // Where there is no wall at all, that is told already.
  if (found === undefined && name !== '' && names.length > 0)
    trouble(
      notes,
      'unknownWall',
      path,
      { name, walls: names.join(', '), ...likelyFigures(name, names) },
      atKey,
    );
  return found ?? name;
}

/** The full name of an edge: a wall, a doorway or an obstacle. */
export function edgeName(name: string, names: readonly string[], path: Path, notes: Notes): string {
  const found = findName(name, names);
  if (found === undefined && name !== '' && names.length > 0)
    trouble(notes, 'unknownEdge', path, { name, names: names.join(', '), ...likelyFigures(name, names) });
  return found ?? name;
}

/** Doorways and obstacles need names of their own that no wall has and that can be put together with a side. */
export function checkNames(
  kind: 'doorways' | 'obstacles' | 'inlays',
  given: readonly (DoorwaySpec | ObstacleSpec | InlaySpec)[],
  taken: readonly string[],
  path: Path,
  notes: Notes,
): void {
  for (const { name } of given) {
    const at = [...path, kind, name];
    if (/[:.]/.test(name) || name.trim() === '') trouble(notes, 'notAName', at, { name }, true);
    else if (taken.some((other) => other.toLowerCase() === name.toLowerCase()))
      trouble(notes, 'nameTaken', at, { name }, true);
  }
}
