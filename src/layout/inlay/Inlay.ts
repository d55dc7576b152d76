import type { Point, Ring } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';

/** A rectangle in the field that has its own tile and pattern, in the pattern's frame of the floor. */
export interface Inlay {
  readonly name: string;
  /** Its edge, counter-clockwise from the corner near both walls it is placed from: its tile ends here, that of the field a joint outside. */
  readonly ring: Ring;
  /** Name of its pattern, and the keys of its tiles, those of its courses too. */
  readonly pattern: string;
  readonly tiles: readonly string[];
  /** What its pattern is set by; missing where no line of its pattern runs through it. */
  readonly chalk?: InlayChalk;
}

/** Lines of an inlay's own pattern, from edge to edge of it, and the tile that is set first beside them. */
export interface InlayChalk {
  /** The upright one of its pattern, the level one, and the one along the zigzag where there is one. */
  readonly lines: readonly InlayLine[];
  readonly firstPiece: string;
  /** How far the first tile stands from the upright line and the level one. */
  readonly guide: { readonly along: Ticks; readonly across: Ticks };
  /** Where tiles lie in zigzag: on the third line stands every so many ticks a corner of a tile that lies as this piece does. */
  readonly zigzag?: { readonly every: Ticks; readonly like: string };
}

export interface InlayLine {
  /** Its place in the order of snapping, after those of the floor. */
  readonly name: string;
  readonly from: Point;
  readonly to: Point;
  readonly marks: readonly InlayMark[];
}

/** A mark on one side of an inlay, where a line ends. */
export interface InlayMark {
  /** The wall that this side runs by, and whether it is the side away from it. */
  readonly wall: string;
  readonly far: boolean;
  /** The other wall: the distance is measured from the end of the side that is nearer to it. */
  readonly end: string;
  readonly distance: Ticks;
}
