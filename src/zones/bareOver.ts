import { type Shape, subtract } from '../geometry/index.ts';
import type { OpenFloor } from './openFloor.ts';

/** What of an open floor stays bare once some of it is tiled: what lies beyond the way out is no part of the work. */
export function bareOver({ open, beyond }: OpenFloor, tiled: readonly Shape[]): readonly Shape[] {
  return subtract(open, subtract(tiled, [{ outer: beyond, holes: [] }]));
}
