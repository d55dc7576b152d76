import type { Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';

/** A notched trowel: width, depth and space of its notches in ticks. */
export interface Notch {
  readonly kind: 'square' | 'v';
  readonly width: Ticks;
  readonly depth: Ticks;
  readonly space: Ticks;
}

/** Depth of the bed that a notched trowel leaves, from the shape of its notches. */
export const BED_DEPTH: Fact<'width × depth ÷ pitch, half of it for V'> = {
  value: 'width × depth ÷ pitch, half of it for V',
  mark: 'G',
  source: 'geometry',
};

/** Angle in degrees at which the trowel is held when nothing else is said. */
export const TROWEL_ANGLE: Fact<number> = { value: 45, mark: 'P', source: 'practice' };

/**
 * Mean depth of the mortar combed by a notched trowel, before the tile is pressed in: ticks, not rounded. `angleDeg` is
 * the angle between trowel and floor; upright, the ridges are as high as the notch is deep.
 *
 * @example
 * bedDepth({ kind: 'square', width: 2032, depth: 3048, space: 2032 }) //=> 1524
 * bedDepth({ kind: 'v', width: 1524, depth: 1524, space: 0 }) //=> 762
 */
export function bedDepth(notch: Notch, angleDeg = 90): number {
  const pitch = notch.width + notch.space;
  if (pitch <= 0) return 0;
  const upright = (notch.width * notch.depth) / pitch;
  return (notch.kind === 'v' ? upright / 2 : upright) * Math.sin((angleDeg * Math.PI) / 180);
}
