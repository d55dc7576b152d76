import type { PacketPiece } from '../packet/Packet.ts';
import { boxOf } from './boxes.ts';
import { block } from './nameBlock.ts';
import { type Scale, toPaper } from './Scale.ts';
import { sizes } from './text.ts';

/** When more than this share of the whole tiles can't hold its name, they are too small: sooner where they can be counted instead. */
const mostSmall = { inRows: 0.1, else: 0.5 } as const;

/** Tiles that lie two ways, as in herringbone, make no columns and rows that an eye can follow. */
export const inRows = (whole: readonly Pick<PacketPiece, 'quarter'>[]): boolean =>
  new Set(whole.map(({ quarter }) => quarter)).size === 1;

/** Whether so many of the whole tiles can't hold their names that they are counted, or left without. */
export function areTooSmall(whole: readonly Pick<PacketPiece, 'quarter'>[], small: number): boolean {
  return small > (inRows(whole) ? mostSmall.inRows : mostSmall.else) * whole.length;
}

/** Whether the box round a piece is smaller than its name at the smallest type, level and upright. */
function isSmaller({ id, shape }: PacketPiece, scale: Scale): boolean {
  const { left, bottom, right, top } = boxOf(shape.outer.map((point) => toPaper(scale, point)));
  return ([0, 90] as const).every((turn) => {
    const { width, height } = block({ name: id, rings: [], pole: [0, 0] }, sizes.smallest, turn, false);
    return width > right - left || height > top - bottom;
  });
}

/**
 * Whether names of whole tiles can't be read at a scale wherever they are put: known without a drawing of thousands of
 * them. What passes may still turn out too small, for names need clear paper round them.
 */
export function tooSmallForNames(pieces: readonly PacketPiece[], scale: Scale): boolean {
  const whole = pieces.filter((piece) => piece.whole);
  return areTooSmall(whole, whole.filter((piece) => isSmaller(piece, scale)).length);
}
