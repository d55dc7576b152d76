import type { Face } from '../frame/Face.ts';
import { gapEnough } from '../pieces/keptGap.ts';
import type { Stretch } from './balanced.ts';
import { endCuts } from './endCuts.ts';
import type { FacingRun } from './findRuns.ts';
import { stretchOf, type Tiled } from './stretchOf.ts';

type Gap = Pick<Face, 'gap' | 'gapMax'>;

/**
 * The cuts at the low and the high end of a run where a tile's lower edge stands at `position`, as they are laid: a strip
 * that is left out as gap, or a tile that stays whole in its gap, leaves a whole tile at that end.
 */
export function laidEnds(
  run: Pick<FacingRun, 'low' | 'high' | 'lowFace' | 'highFace'>,
  pattern: Tiled,
  axis: 0 | 1,
  position: number,
  faces: readonly Gap[],
): readonly [number, number] {
  const stretch = stretchOf(run, pattern, axis);
  const [low, high] = endCuts(stretch, position);
  return [laid(low, stretch, faces[run.lowFace]!), laid(high, stretch, faces[run.highFace]!)];
}

function laid(cut: number, { size, joint }: Stretch, face: Gap): number {
  const leftOut = cut + joint + face.gap <= face.gapMax;
  const staysWhole = size - cut <= face.gap - gapEnough(face.gap);
  return leftOut || staysWhole ? size : cut;
}
