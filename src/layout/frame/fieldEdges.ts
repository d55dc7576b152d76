import { type Point, type Shape, side } from '../../geometry/index.ts';
import { aheadOfFace, distanceToFace, type Face, stretchesOf } from './Face.ts';

/** One edge of the field, the field on its left. Numbers are places in lists, so that chains are walked fast. */
export interface FieldEdge {
  readonly from: Point;
  readonly to: Point;
  /** The edge that goes on where this one ends. */
  readonly next: number;
  /** The face that it keeps its gap from. */
  readonly face: number;
  /** Whether the field has more than half a turn at the end of this edge: a corner that stands into it. */
  readonly standsIn: boolean;
}

/** The edges of a field in one list, each with the face it belongs to. */
export function fieldEdges(field: readonly Shape[], faces: readonly Face[]): FieldEdge[] {
  const edges: FieldEdge[] = [];
  const stretches = faces.map(stretchesOf);
  for (const ring of field.flatMap(({ outer, holes }) => [outer, ...holes])) {
    const first = edges.length;
    const n = ring.length;
    for (let i = 0; i < n; i++) {
      const [from, to, after] = [ring[i]!, ring[(i + 1) % n]!, ring[(i + 2) % n]!];
      const face = faceOf(from, to, stretches);
      edges.push({ from, to, next: first + ((i + 1) % n), face, standsIn: side(from, to, after) < 0 });
    }
  }
  return edges;
}

/** The face whose gap an edge of the field keeps best; a short step between two gaps goes to the nearest. */
function faceOf(from: Point, to: Point, faces: readonly (readonly Face[])[]): number {
  let best = 0;
  let least = Infinity;
  faces.forEach((stretches, index) => {
    for (const face of stretches) {
      const misfit =
        face.circle || alike(from, to, face) ? misfitOf(from, to, face) : looseFit(from, to, face);
      if (misfit < least) [best, least] = [index, misfit];
    }
  });
  return best;
}

function alike(from: Point, to: Point, face: Face): boolean {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const [fx, fy] = [face.to[0] - face.from[0], face.to[1] - face.from[1]];
  return (dx * fx + dy * fy) / (Math.hypot(dx, dy) * Math.hypot(fx, fy)) > 0.99;
}

/** How far the edge is from lying at the face's gap; an edge beside the face, not along it, fits worse. */
function misfitOf(from: Point, to: Point, face: Face): number {
  const reach = face.circle ? distanceToFace : aheadOfFace;
  const off = Math.max(Math.abs(reach(face, from) - face.gap), Math.abs(reach(face, to) - face.gap));
  if (face.circle) return off;
  const middle: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  return off + Math.max(0, distanceToFace(face, middle) - Math.abs(aheadOfFace(face, middle)));
}

/** For edges along no face: worse than any edge along one that fits within its gap. */
function looseFit(from: Point, to: Point, face: Face): number {
  return 2 * face.gap + Math.max(distanceToFace(face, from), distanceToFace(face, to));
}
