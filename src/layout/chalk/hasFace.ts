import type { Meets } from '../../job/Job.ts';
import type { RoomEdge } from '../../room/Room.ts';

/** What has no face at floor level that a tape could lie along. */
const NO_FACE: readonly Meets[] = ['doorway', 'floor', 'flange', 'pipe'];

/** Whether a tape can lie along an edge. */
export function hasFace({ touch, meets }: Pick<RoomEdge, 'touch' | 'meets'>): boolean {
  return touch && !NO_FACE.includes(meets);
}
