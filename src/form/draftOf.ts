import type { Problem } from '../job/Problem.ts';
import { isWithin } from '../job/shape/readShape.ts';
import type { Path } from '../job/shape/Trouble.ts';
import { valueAt, without } from '../job/shape/valueAt.ts';
import { keysAt } from './roomNames.ts';

/** Keys of a floor that give its shape; the others do not matter to a drawing of it. */
const shaping = [
  'walls',
  'diagonals',
  'angles',
  'corner checks',
  'base line',
  'set aside',
  'precision',
  'doorways',
  'obstacles',
];

/** A floor without what cannot be read, and the walls whose readings are missing or cannot be read. */
export interface Draft {
  readonly floor: unknown;
  readonly unread: readonly string[];
}

const isReading = (path: Path, wall: Path): boolean =>
  path.length === wall.length || path[wall.length] === 'read' || typeof path[wall.length] === 'number';

/** The part of the floor's entry that a problem spoils: a whole doorway, but of a wall only the key that is wrong. */
function spoilt(path: Path, floor: Path): Path | undefined {
  if (!isWithin(path, floor) || path.length <= floor.length) return undefined;
  return path[floor.length] === 'walls'
    ? path.slice(floor.length, floor.length + 3)
    : path.slice(floor.length, floor.length + 2);
}

/** What of a floor can be drawn while its file still has problems. */
export function draftOf(tree: unknown, at: Path, problems: readonly Problem[]): Draft {
  const whole = valueAt(tree, at);
  const keys = keysAt(tree, at).filter((key) => shaping.includes(key));
  const floor: unknown = Object.fromEntries(keys.map((key) => [key, valueAt(whole, [key])]));
  const walls = keysAt(floor, ['walls']);
  const isSpoilt = (wall: string) =>
    problems.some(
      ({ path }) => isWithin(path, [...at, 'walls', wall]) && isReading(path, [...at, 'walls', wall]),
    );
  const unread = walls.filter(isSpoilt);
  const mended = problems.reduce((rest, { path }) => {
    const part = spoilt(path, at);
    return part === undefined || (part[0] === 'walls' && part.length < 3) ? rest : without(rest, part);
  }, floor);
  return { floor: mended, unread };
}
