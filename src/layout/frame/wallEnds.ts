import type { Point } from '../../geometry/index.ts';
import type { Room } from '../../room/Room.ts';

/**
 * Where a wall begins and ends, in the room's frame: at the ends of its faces, or, where an opening takes all of it, at its
 * corners. Undefined where no wall has that name.
 */
export function wallEnds(
  { corners, edges, adjustment }: Pick<Room, 'corners' | 'edges' | 'adjustment'>,
  wall: string,
): readonly [from: Point, to: Point] | undefined {
  const { corners: named } = adjustment;
  const at = named.findIndex(({ name }, i) => `${name}-${named[(i + 1) % named.length]!.name}` === wall);
  if (at < 0) return undefined;
  const own = edges.filter(({ name }) => name === wall);
  return [own[0]?.from ?? corners[at]!, own.at(-1)?.to ?? corners[(at + 1) % corners.length]!];
}
