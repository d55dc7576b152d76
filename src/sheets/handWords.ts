import type { Cut } from '../cuts/Cut.ts';
import { type CardTurn, shownHand, type TileSides } from '../drawing/index.ts';
import type { Say } from './SheetView.ts';

/** On which side of its card more of a handed cut's tile is taken away; nothing where the cut has no hand. */
export function handWords(say: Say, cut: Cut, tile: TileSides, turn?: CardTurn): string {
  const hand = shownHand(cut, tile, turn);
  return hand === 'none' ? '' : say(`cut.hand.${hand}`);
}
