import { bounds, isNarrower } from '../../geometry/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import { hasWebFault, isNearFull, isThin, isUnderHalf } from '../faults/limits.ts';
import type { Ground } from '../frame/Ground.ts';
import type { Candidate } from '../Layout.ts';
import { countTiles } from '../pieces/insideTiles.ts';
import type { LaidPiece } from '../pieces/LaidPiece.ts';
import { type Laid, layTiles } from '../pieces/layTiles.ts';
import type { Choice, MainRuns } from './Choice.ts';
import { laidEnds } from './laidEnds.ts';
import { narrowEnd } from './narrowEnd.ts';
import { pieceEnds } from './pieceEnds.ts';
import { reasonsOf } from './reasonsOf.ts';

/** A start with what it makes of the floor: counted piece by piece, not estimated. `laid` are its tiles, where they are laid already. */
export function evaluate(
  ground: Ground,
  pattern: Pattern,
  choice: Choice,
  runs: MainRuns,
  laid: Laid = layTiles(ground, pattern, choice.origin),
): Candidate {
  const place = placeOf(ground, pattern, choice, runs);
  const ends = pattern.inCourses ? place.ends : pieceEnds(ground, laid.border, pattern, runs);
  return { ...countsOf(ground, pattern, laid), ...place, ends };
}

type Counts = Omit<Candidate, 'origin' | 'reason' | 'shift' | 'ends'>;

function countsOf(ground: Ground, pattern: Pattern, { inside, border }: Laid): Counts {
  const all = countTiles(inside) + border.length;
  const cut = border.filter(({ whole }) => !whole);
  const inSight = cut.filter(({ seen }) => seen !== 'hidden');
  const count = (has: (piece: LaidPiece) => boolean) => cut.filter(has).length;
  return {
    pieces: all,
    whole: all - cut.length,
    cut: cut.length,
    cutLength: cut.reduce((sum, { sawn }) => sum + sawn, 0),
    ...smallestOf(inSight, pattern),
    underHalf: inSight.filter((piece) => isUnderHalf(piece, ground, pattern.joint)).length,
    thin: inSight.filter((piece) => isThin(piece, ground)).length,
    slivers: cut.filter(({ shape }) => isNarrower(shape.outer, ground.minWeb / 2)).length,
    nearFull: count((piece) => isNearFull(piece, ground)),
    webFaults: count((piece) => hasWebFault(piece, ground)),
    hardCuts: count(({ hard }) => hard),
  };
}

/** The piece in sight that is the smallest share of its tile, and its size that way; a whole tile where nothing is cut. */
function smallestOf(
  inSight: readonly LaidPiece[],
  pattern: Pattern,
): Pick<Candidate, 'smallest' | 'smallestShare' | 'smallestEnd'> {
  const { minX, minY, maxX, maxY } = bounds(pattern.tiles[0]!.ring);
  let best = { smallestShare: 1, smallest: Math.min(maxX - minX, maxY - minY) };
  let least: LaidPiece | undefined;
  for (const piece of inSight) {
    const axis = smallAxis(piece);
    const share = piece.shares[axis];
    if (share >= best.smallestShare) continue;
    best = { smallestShare: share, smallest: piece.extent[axis] };
    least = piece;
  }
  const end = least && narrowEnd(least.shape.outer, smallAxis(least));
  return end === undefined ? best : { ...best, smallestEnd: end };
}

const smallAxis = ({ shares }: LaidPiece) => (shares[0] <= shares[1] ? 0 : 1);

function placeOf(
  { faces }: Ground,
  pattern: Pattern,
  choice: Choice,
  runs: MainRuns,
): Pick<Candidate, 'origin' | 'reason' | 'shift' | 'ends'> {
  const { origin, shift } = choice;
  const ends = {
    along: laidEnds(runs.along, pattern, 0, origin[0], faces),
    across: laidEnds(runs.across, pattern, 1, origin[1], faces),
  };
  return { origin, shift, ends, reason: reasonsOf(choice) };
}
