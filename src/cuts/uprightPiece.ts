import { shapeCentroid } from '../geometry/index.ts';
import type { TileSpec } from '../job/Job.ts';
import type { Ticks } from '../measure/index.ts';
import type { Cut } from './Cut.ts';
import { type Description, describePiece } from './describePiece.ts';
import { keyOf, rankOf } from './keyOf.ts';
import { mirrorPiece, type OwnPiece, type Turn, turnPiece, turnsOf } from './TileBox.ts';

/** A piece turned to the one way in which equal cuts look equal. */
export interface UprightPiece {
  readonly piece: OwnPiece;
  readonly description: Description;
  readonly key: string;
  readonly hand: Cut['hand'];
  /** Turn that brings it from these axes back to its own place in its tile. */
  readonly turn: Turn;
}

interface Tried {
  readonly piece: OwnPiece;
  readonly description: Description;
  readonly rank: string;
  readonly turn: Turn;
}

/**
 * Turns a piece, as far as its tile allows, so that equal cuts come to lie alike. A mirror image comes to lie as the mirror
 * image of its partner: both are told apart by `hand`, left where more is taken away on the left. Rectangles have no hand.
 *
 * @param piece in its tile's own axes.
 */
export function uprightPiece(piece: OwnPiece, turns: TileSpec['turns'], step: Ticks): UprightPiece {
  const best = bestTurn(piece, turns, step);
  const plain = {
    piece: best.piece,
    description: best.description,
    turn: back(best.turn),
    hand: 'none' as const,
  };
  const { kind } = best.description;
  if (kind === 'rip' || kind === 'corner') return { ...plain, key: keyOf(best.description) };
  const other = bestTurn(mirrorPiece(piece), turns, step);
  if (other.rank === best.rank) return { ...plain, key: keyOf(best.description) };
  const [first, isFirst] = best.rank < other.rank ? [best, true] : [other, false];
  const leftFirst = moreTakenLeft(first.piece);
  const hand = isFirst === leftFirst ? 'left' : 'right';
  const key = `${keyOf(first.description)}|${hand}`;
  if (isFirst) return { ...plain, key, hand };
  const mirrored = mirrorPiece(other.piece);
  // A mirror image turned one way is the mirror image of the piece turned the other way.
  return { piece: mirrored, description: describePiece(mirrored, step), key, hand, turn: other.turn };
}

function bestTurn(piece: OwnPiece, turns: TileSpec['turns'], step: Ticks): Tried {
  const tried = turnsOf(turns, piece.box).map((turn): Tried => {
    const turned = turnPiece(piece, turn);
    const description = describePiece(turned, step);
    return { piece: turned, description, rank: rankOf(description), turn };
  });
  return tried.reduce((best, next) => (next.rank < best.rank ? next : best));
}

const back = (turn: Turn): Turn => ((360 - turn) % 360) as Turn;

/** Whether what is sawn off lies more on the left half of the tile. */
function moreTakenLeft({ shape, box }: OwnPiece): boolean {
  return shapeCentroid(shape)[0] >= box.length / 2;
}
