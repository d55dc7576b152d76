import type { Point, Ring, Shape } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { RoomEdge } from '../../room/Room.ts';

/** What a tape meets in a room, in the pattern's frame. */
export interface Faces {
  /** Of the room and of what stands in it. */
  readonly edges: readonly RoomEdge[];
  /** The room's corners with their names, in the order of the walk. */
  readonly corners: readonly { readonly name: string; readonly at: Point }[];
  readonly obstacles: readonly { readonly ring: Ring; readonly edges: readonly RoomEdge[] }[];
  /** The room with its doorways, less what stands in it. */
  readonly floor: readonly Shape[];
  /** Length of each wall as used, by its name. */
  readonly walls: ReadonlyMap<string, Ticks>;
}
