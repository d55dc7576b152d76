import { axisOf, innerCorners } from './edgeFacts.ts';
import type { OutlineEdge } from './Outline.ts';

/** The form of a piece with its holes and arcs filled; whether a rectangle is a rip, a corner or a taper follows from its sizes. */
export type Form =
  | { readonly form: 'full' | 'rectangle' | 'point' | 'odd'; readonly pocket: readonly number[] }
  /** `pocket`: indices of the edges along the pocket, in the order walked. */
  | { readonly form: 'notch' | 'u'; readonly pocket: readonly number[] };

/** The ends of both arms of a U lie in one line within this many ticks. */
const LEVEL = 254;

/**
 * Reads the form of a piece from its outline in the tile's own axes. Of a tile that is no rectangle, `shaped`, a piece that is sawn
 * along its axes only counts as a rectangle too, whatever its factory edges are: it is measured across the tile.
 */
export function formOf(edges: readonly OutlineEdge[], shaped = false): Form {
  const none = { pocket: [] };
  const inner = innerCorners(edges);
  const oblique = edges.some((edge) => edge.what === 'sawn' && axisOf(edge) === 'oblique');
  if (inner.length === 0) {
    if (edges.every((edge) => edge.what !== 'sawn')) return { form: 'full', ...none };
    return { form: (shaped || edges.length === 4) && !oblique ? 'rectangle' : 'point', ...none };
  }
  const n = edges.length;
  const [first, second] = [inner[0]!, inner[1]];
  if (!oblique && inner.length === 1 && n === 6)
    return { form: 'notch', pocket: [(first + n - 1) % n, first] };
  if (!oblique && inner.length === 2 && n === 8) {
    const floor = (first + 1) % n === second ? first : (second! + 1) % n === first ? second! : undefined;
    if (floor !== undefined && armsLevel(edges, floor))
      return { form: 'u', pocket: [(floor + n - 1) % n, floor, (floor + 1) % n] };
  }
  return { form: 'odd', ...none };
}

/** Whether both arms of a U end in one line, so that a straight edge laid across them touches both. */
function armsLevel(edges: readonly OutlineEdge[], floor: number): boolean {
  const n = edges.length;
  const [one, other] = [edges[(floor + n - 2) % n]!, edges[(floor + 2) % n]!];
  if (one.what !== other.what) return false;
  if (one.what === 'factory') return one.on === other.on;
  const axis = axisOf(one) === 'x' ? 0 : 1;
  return Math.abs(one.to[axis] - other.from[axis]) <= LEVEL;
}
