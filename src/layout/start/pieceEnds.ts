import { bounds } from '../../geometry/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { Face } from '../frame/Face.ts';
import type { Ground } from '../frame/Ground.ts';
import type { Candidate } from '../Layout.ts';
import type { LaidPiece } from '../pieces/LaidPiece.ts';
import { cutsAlong } from '../taper/cutsAlong.ts';
import type { MainRuns } from './Choice.ts';
import { MOST_LEAN } from './findRuns.ts';

/**
 * The cuts at the ends of both runs, where no course tells them: the narrowest of any tile there, from the tile's own far side to the
 * wall, as it is set at the saw; a whole tile where none is cut. At a wall aslant to the pattern it is the least that a piece measures.
 */
export function pieceEnds(
  ground: Ground,
  border: readonly LaidPiece[],
  pattern: Pattern,
  runs: MainRuns,
): Candidate['ends'] {
  const { minX, minY, maxX, maxY } = bounds(pattern.tiles[0]!.ring);
  const whole = [maxX - minX, maxY - minY] as const;
  const narrowest = (face: number, axis: 0 | 1) => {
    const across = axis === 0 ? 1 : 0;
    if (!leans(ground.faces[face]!, across))
      return cutsAlong({ axis: across, faces: [face] }, border, ground)?.narrow ?? whole[axis];
    const cut = border.filter((piece) => !piece.whole && piece.faces.includes(face));
    return Math.min(...cut.map(({ extent }) => extent[axis]));
  };
  const ends = ({ lowFace, highFace }: MainRuns['along'], axis: 0 | 1) =>
    [lowFace, highFace].map((face) => Math.min(whole[axis], narrowest(face, axis)));
  const [[left, right], [near, far]] = [ends(runs.along, 0), ends(runs.across, 1)];
  return { along: [left!, right!], across: [near!, far!] };
}

/** Whether a face runs so far off an axis that tiles are cut aslant there; a bend does everywhere. */
function leans({ from, to, circle, curve }: Face, axis: 0 | 1): boolean {
  if (circle || curve) return true;
  const [along, across] = [Math.abs(to[axis] - from[axis]), Math.abs(to[1 - axis]! - from[1 - axis]!)];
  return across > MOST_LEAN * along;
}
