import type { Ticks } from '../../measure/index.ts';
import type { Ground } from '../frame/Ground.ts';
import type { Fault } from '../Layout.ts';
import type { NamedPiece } from '../names/namePieces.ts';
import { wideJoints } from './wideJoints.ts';

/** The borders beside which the joint is wider than the others, with the pieces along it. Figures: `size` and `limit` in ticks. */
export function borderJoints({ frame }: Ground, named: readonly NamedPiece[], joint: Ticks): Fault[] {
  const pieces = named.map(({ laid }) => laid);
  return wideJoints(frame.edges, pieces, joint).map(({ edge, more, pieces: own }): Fault => {
    return {
      code: 'borderJoint',
      pieces: own.map((at) => named[at]!.id),
      figures: { count: own.length, size: joint + more, limit: joint },
      edge,
    };
  });
}
