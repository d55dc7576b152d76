import type { Point, Ring } from '../geometry/index.ts';
import type { Path } from '../job/shape/Trouble.ts';
import type { System, Ticks } from '../measure/index.ts';
import type { Adjustment } from '../room/Room.ts';

/** A wall as it is drawn while the room is being measured. */
export interface LiveWall {
  readonly id: string;
  readonly from: Point;
  readonly to: Point;
  /** Its face without the openings in it, as parts of one straight line or of a bow. */
  readonly faces: readonly (readonly Point[])[];
  /** `unread`: drawn at a length that nobody read; `suspect`: the other readings contradict it. */
  readonly state: 'read' | 'unread' | 'suspect';
  /** Length used and what was added to the reading for it, in ticks; none while it is unread. */
  readonly used?: Ticks;
  readonly correction?: Ticks;
}

export interface LiveDiagonal {
  readonly id: string;
  readonly from: Point;
  readonly to: Point;
  readonly suspect: boolean;
}

/** A floor as far as it is known, in the room's frame. */
export interface LiveRoom {
  readonly floor: Path;
  readonly system: System;
  readonly corners: readonly { readonly name: string; readonly at: Point }[];
  readonly walls: readonly LiveWall[];
  readonly diagonals: readonly LiveDiagonal[];
  /** Lines under closed doors with the jambs up to them. */
  readonly doors: readonly (readonly Point[])[];
  readonly obstacles: readonly { readonly name: string; readonly ring: Ring }[];
  /** Missing while a wall is unread: nothing can be said of how it closes. */
  readonly adjustment?: Adjustment;
}
