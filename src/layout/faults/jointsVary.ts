import type { Pattern } from '../../pattern/Pattern.ts';
import type { Fault } from '../Layout.ts';

/** Told where the tiles of a pattern cannot have joints of one width: which tile lacks how much, and how wide joints become. */
export function jointsVary({ closing }: Pattern): Fault[] {
  if (!closing) return [];
  const { tile, side, has, needs, least, most } = closing;
  return [{ code: 'jointsVary', pieces: [], figures: { tile, side, has, needs, least, most } }];
}
