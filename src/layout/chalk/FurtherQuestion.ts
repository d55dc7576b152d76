import type { System } from '../../measure/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { FramedRoom } from '../Layout.ts';
import type { WideJoint } from '../movement/WideJoint.ts';
import type { Faces } from './Faces.ts';

/** What lines beside the first two are chosen by. */
export interface FurtherQuestion {
  readonly frame: FramedRoom;
  readonly faces: Faces;
  readonly pattern: Pattern;
  readonly system: System;
  readonly wide?: readonly WideJoint[];
}
