import { bounds, type Point } from '../../../geometry/index.ts';
import type { Ticks } from '../../../measure/index.ts';
import { isThin, leastStrip } from '../../faults/limits.ts';
import type { Ground } from '../../frame/Ground.ts';
import type { Candidate } from '../../Layout.ts';
import type { LaidPiece } from '../../pieces/LaidPiece.ts';
import { layTiles } from '../../pieces/layTiles.ts';
import { affordable } from '../affordable.ts';
import type { AlternativeQuestion } from './AlternativeQuestion.ts';
import { moved } from './moved.ts';

/** Moves tried at most, the shortest first. */
const MOST = 16;
const MOST_PER_AXIS = 8;

/**
 * Where strips in sight are thinner than the least: the shortest move that leaves the fewest of them. A
 * strip is either brought up to the least width or moved out of the field.
 */
export function freedStrips(question: AlternativeQuestion): Candidate[] {
  const { ground, pattern, chosen } = question;
  const before = chosen.candidate.thin ?? 0;
  if (before === 0) return [];
  const { border } = layTiles(ground, pattern, chosen.choice.origin);
  const thin = border.filter((piece) => !piece.whole && piece.seen !== 'hidden' && isThin(piece, ground));
  const moves = crossedMoves(movesOn(0, thin, ground), movesOn(1, thin, ground));
  const reason = { code: 'start.freedStrips', figures: { beforeCount: before } };
  const made = moves.slice(0, Math.min(MOST, affordable(question))).map((by) => moved(question, by, reason));
  const better = made.filter(({ thin: after }) => (after ?? 0) < before);
  better.sort((a, b) => (a.thin ?? 0) - (b.thin ?? 0) || a.underHalf - b.underHalf || a.shift - b.shift);
  return better.slice(0, 1).map((one) => {
    const [{ code, figures }] = one.reason as [Candidate['reason'][number]];
    return { ...one, reason: [{ code, figures: { ...figures, afterCount: one.thin ?? 0 } }] };
  });
}

/** Moves along an axis that widen each thin strip to the least or take it away, the shortest of them. */
function movesOn(axis: 0 | 1, thin: readonly LaidPiece[], ground: Ground): Ticks[] {
  const moves = thin.flatMap(({ shape, ring, extent }) => {
    const size = extent[axis];
    const least = leastStrip(ring, ground);
    if (size >= least) return [];
    const low = axis === 0 ? bounds(shape.outer).minX : bounds(shape.outer).minY;
    const tileLow = axis === 0 ? bounds(ring).minX : bounds(ring).minY;
    // What is left of the tile is its low part: the tile must come down for the strip to grow.
    const grow = low === tileLow ? -1 : 1;
    return [grow * (least - size), -grow * size];
  });
  const shortest = [...new Set([0, ...moves])].sort((a, b) => Math.abs(a) - Math.abs(b));
  return shortest.slice(0, MOST_PER_AXIS);
}

function crossedMoves(along: readonly Ticks[], across: readonly Ticks[]): Point[] {
  const all = along.flatMap((x) => across.map((y): Point => [x, y]));
  const length = ([x, y]: Point) => Math.abs(x) + Math.abs(y);
  return all.filter((by) => length(by) > 0).sort((a, b) => length(a) - length(b));
}
