import type { Cut } from '../cuts/Cut.ts';
import { shownHand, type TileSides } from '../drawing/index.ts';
import type { Say } from './SheetView.ts';

/** On which side of its card more of a handed cut's tile is taken away; nothing where the cut has no hand. */
export function handWords(say: Say, cut: Cut, tile: TileSides): string {
  const hand = shownHand(cut, tile);
  return hand === 'none' ? '' : say(`cut.hand.${hand}`);
}
