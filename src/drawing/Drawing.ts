import type { Ring } from '../geometry/index.ts';
import type { Notation } from '../measure/index.ts';

/** Puts a code and its figures into words of one language. */
export type Say = (code: string, figures?: Readonly<Record<string, unknown>>) => string;

/** Space for a drawing in mm of paper. */
export interface Space {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** A finished drawing. `ratio` 12 means 1:12 true to scale; null where the drawing has no scale. */
export interface Drawing extends Space {
  readonly svg: string;
  readonly ratio: number | null;
}

/** What every drawing needs to know. */
export interface DrawOptions extends Notation {
  /** Unique on its page; letters, digits and hyphens. The ids of the drawing's fills begin with it. */
  readonly id: string;
  /** What the drawing shows, for those who can't see it. */
  readonly label: string;
  readonly say: Say;
}

/** A surface of the packet as far as a drawing in the room's frame needs it. */
export interface Turned {
  readonly turn: number;
  readonly outline: Ring;
}
