import type { Point, Ring } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';

/** A part of the field that is set in one go, in the pattern's frame. */
export interface Zone {
  readonly number: number;
  readonly pieces: readonly string[];
  /** Its part of the field, joints and all, so that all zones together are the area of the tally. */
  readonly areaM2: number;
  /** Hours to set it at the job's pace. */
  readonly hours: number;
  /** The lines along which it ends and a later zone goes on: one where it is straight. */
  readonly seam?: readonly { readonly from: Point; readonly to: Point }[];
  /** First and last piece to set, by name. */
  readonly first: string;
  readonly last: string;
  /** Where tile by the first piece shuts off a part of the zone from the way out, or the zone goes on behind it: the piece of that part, or of the zone, one has farthest to walk to. */
  readonly beyond?: string;
  /** Doorway through which you leave, when there is one. */
  readonly wayOut?: string;
  /** True where that doorway is the only one, so that nobody crosses this floor until it may be walked. */
  readonly onlyWayOut?: boolean;
  readonly rows: readonly string[];
  readonly region?: Ring;
  /**
   * Mortar for the zone, powder in kg, by the rate that rules in the tally, and how many batches the pot life asks for. Those of all
   * zones together are the tally's figure before anything is bought beyond it. Older packets do not say which rate it is.
   */
  readonly mortarKg: number;
  readonly mortarBy?: 'bag' | 'notch' | 'bed';
  readonly batches: number;
  /** For each end of a row where a piece is sawn: the space from the last whole edge to the wall, and the cuts that take up a difference. */
  readonly found: readonly {
    /** The edge of the room at that end. */
    readonly edge?: string;
    readonly row: string;
    readonly expected: Ticks;
    readonly cuts: readonly number[];
  }[];
}
