import type { Ticks } from '../../../measure/index.ts';
import type { Face } from '../../frame/Face.ts';
import type { Ground } from '../../frame/Ground.ts';
import { namedEdge } from '../namedEdge.ts';

/** A wall at which a cut tells where a pattern stands on an axis: where the field ends, and which way it lies from there. */
export interface CutWall {
  readonly wall: string;
  readonly field: Ticks;
  readonly way: 1 | -1;
}

/** The walls that a line along the axis (0 for x, 1 for y) meets, the longest first; within a border its inner edges, in the names of their walls. */
export function cutWalls(ground: Ground, axis: 0 | 1): readonly CutWall[] {
  const walls = ground.faces.filter(({ id, name, circle, curve }) => {
    const own = id.replace(/\.\d+$/, '');
    return (own === name || own === `border:${name}`) && !circle && !curve;
  });
  const longest = [...walls].sort((one, other) => lengthOf(other) - lengthOf(one));
  return [...new Set(longest.map(({ name }) => name))].flatMap((wall): CutWall[] => {
    const edge = namedEdge(ground, wall, axis);
    if (edge?.aslant) return [{ wall, ...edge.aslant }];
    if (!edge || edge.side === 'none') return [];
    return [{ wall, field: edge.field, way: edge.side === 'low' ? 1 : -1 }];
  });
}

function lengthOf({ from, to }: Face): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1]);
}
