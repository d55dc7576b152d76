import type { SurfaceSpec } from '../../job/Job.ts';
import { TICKS_PER_INCH, type Ticks } from '../../measure/index.ts';
import { START_TOLERANCE, type StartTolerance, TAPER_SHOWS } from '../../trade/index.ts';
import type { WideJoint } from '../movement/WideJoint.ts';
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
  /** What the search for a start goes by, and how many times a wall counts where the eye falls. */
  readonly tolerance: StartTolerance;
  readonly focalWeight: number;
  /** Wide joints at which it is drawn together; missing where it lies as the room does. */
  readonly wide?: readonly WideJoint[];
  /** Laid with sheets of mosaic: their edge is a joint between chips, so that none is too thin beside an opening. */
  readonly sheets?: boolean;
}

/** Makes a framed room ready to lay patterns on; `doorways` are the names of its doorways, `step` is the saw's. */
export function makeGround(
  frame: RoomInFrame,
  doorways: readonly string[],
  {
    minWeb,
    minStrip,
    minShare,
    start,
    focalWeight,
  }: Pick<SurfaceSpec, 'minWeb' | 'minStrip' | 'minShare' | 'start' | 'focalWeight'>,
  step: Ticks = TICKS_PER_INCH / 16,
): Ground {
  const faces = facesOf(frame, doorways);
  return {
    frame,
    faces,
    edges: fieldEdges(frame.field, faces),
    minWeb,
    minStrip,
    minShare,
    flat: step / 2,
    tolerance: start.tolerance ?? START_TOLERANCE.value,
    focalWeight: focalWeight ?? TAPER_SHOWS.value.focalWeight,
  };
}
