import { bounds, intersect, type Point, type Ring, type Shape, subtract } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { RoomEdge } from '../../room/Room.ts';
import type { Face } from '../frame/Face.ts';
import { fieldEdges } from '../frame/fieldEdges.ts';
import type { Ground } from '../frame/Ground.ts';
import { type SoftLine, softReach, softStrip } from '../movement/SoftLine.ts';
import { jointFacts } from './courseEnds.ts';

/** What the face of a soft joint is called by. */
export const SOFT_FACE = 'soft';

/** A part of a ground between soft joints: on which side of each it lies, 1 beyond it. */
export interface GroundPart {
  readonly ground: Ground;
  readonly sides: readonly (0 | 1)[];
}

/** The soft joints that run through a part of the floor. */
export function softThrough(floor: readonly Shape[], lines: readonly SoftLine[]): readonly SoftLine[] {
  return lines.filter((line) => intersect(floor, [{ outer: softStrip(line), holes: [] }]).length > 0);
}

/** A ground with the faces of soft joints that run through it among its own. */
export function withSoftFaces(ground: Ground, lines: readonly SoftLine[]): Ground {
  const edges = softEdges(
    ground.frame.field.map(({ outer }) => outer),
    lines,
  );
  return { ...ground, faces: [...ground.faces, ...edges.map((edge): Face => ({ ...edge, doorway: false }))] };
}

/**
 * Soft joints through what lies in these rings as edges, two of each: what bounds the floor before it and what bounds the floor beyond.
 * The floor is on the left of an edge, so before a joint that stands upright in the frame it runs up, beyond it down.
 */
export function softEdges(rings: readonly Ring[], lines: readonly SoftLine[]): readonly RoomEdge[] {
  const { minX, minY, maxX, maxY } = bounds(rings);
  return lines.flatMap((line) => {
    const [low, high] = softReach(line);
    const isUpright = line.axis === 'along';
    const [least, most]: readonly [Point, Point] = isUpright
      ? [
          [line.at, minY],
          [line.at, maxY],
        ]
      : [
          [maxX, line.at],
          [minX, line.at],
        ];
    const edge = (from: Point, to: Point, gap: Ticks): RoomEdge => {
      return { ...jointFacts(gap), id: SOFT_FACE, name: SOFT_FACE, from, to };
    };
    return [edge(least, most, line.at - low), edge(most, least, high - line.at)];
  });
}

/**
 * The parts into which soft joints part a ground whose faces know them, each joint narrower by what it gives to its low and its high
 * side: a tile that stands at one is touched by no saw.
 */
export function partGround(
  ground: Ground,
  lines: readonly SoftLine[],
  gives: readonly (readonly [Ticks, Ticks])[] = [],
): readonly GroundPart[] {
  const strips = lines.map((line, i): Shape => ({ outer: softStrip(line, gives[i]), holes: [] }));
  const parts = new Map<string, { readonly sides: GroundPart['sides']; readonly shapes: Shape[] }>();
  for (const shape of subtract(ground.frame.field, strips)) {
    const { minX, minY, maxX, maxY } = bounds(shape.outer);
    const middle = [(minX + maxX) / 2, (minY + maxY) / 2] as const;
    const sides = lines.map(({ axis, at }) => (middle[axis === 'along' ? 0 : 1] > at ? 1 : 0));
    const part = parts.get(sides.join('')) ?? { sides, shapes: [] };
    part.shapes.push(shape);
    parts.set(sides.join(''), part);
  }
  return [...parts.values()].map(({ sides, shapes }) => ({ ground: onField(ground, shapes), sides }));
}

function onField(ground: Ground, field: readonly Shape[]): Ground {
  return { ...ground, frame: { ...ground.frame, field }, edges: fieldEdges(field, ground.faces) };
}
