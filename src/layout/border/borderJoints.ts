import { TICKS_PER_64TH, type Ticks } from '../../measure/index.ts';
import type { Ground } from '../frame/Ground.ts';
import type { Fault } from '../Layout.ts';
import type { NamedPiece } from '../names/namePieces.ts';
import { wideJoints } from './wideJoints.ts';

/**
 * The borders beside which the joint is wider than the others, with the pieces along it. What is less than a sixty-fourth of an inch nobody
 * sees, nor sets. Figures: `size` and `limit` in ticks.
 */
export function borderJoints({ frame }: Ground, named: readonly NamedPiece[], joint: Ticks): Fault[] {
  const pieces = named.map(({ laid }) => laid);
  const wide = wideJoints(frame.edges, pieces, joint).filter(({ more }) => more >= TICKS_PER_64TH);
  return wide.map(({ edge, more, pieces: own }): Fault => {
    return {
      code: 'borderJoint',
      pieces: own.map((at) => named[at]!.id),
      figures: { count: own.length, size: joint + more, limit: joint },
      edge,
    };
  });
}
