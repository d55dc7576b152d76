import type { SurfaceSpec } from '../../job/Job.ts';
import { TICKS_PER_INCH, type Ticks } from '../../measure/index.ts';
import { type Face, facesOf } from './Face.ts';
import { type FieldEdge, fieldEdges } from './fieldEdges.ts';
import type { RoomInFrame } from './frameRoom.ts';

/** What a pattern is laid on, made ready once: the framed room, its faces, and the edges of its field. */
export interface Ground {
  readonly frame: RoomInFrame;
  readonly faces: readonly Face[];
  readonly edges: readonly FieldEdge[];
  readonly minWeb: Ticks;
  readonly minStrip: Ticks;
  readonly minShare: number;
  /** A bend of no more than this, half a saw step, is sawn straight. */
  readonly flat: Ticks;
}

/** Makes a framed room ready to lay patterns on; `doorways` are the names of its doorways, `step` is the saw's. */
export function makeGround(
  frame: RoomInFrame,
  doorways: readonly string[],
  { minWeb, minStrip, minShare }: Pick<SurfaceSpec, 'minWeb' | 'minStrip' | 'minShare'>,
  step: Ticks = TICKS_PER_INCH / 16,
): Ground {
  const faces = facesOf(frame, doorways);
  return { frame, faces, edges: fieldEdges(frame.field, faces), minWeb, minStrip, minShare, flat: step / 2 };
}
