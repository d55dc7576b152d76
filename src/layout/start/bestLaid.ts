import { TICKS_PER_INCH } from '../../measure/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { Choice } from './Choice.ts';
import { climbed } from './climbed.ts';
import { laidInRounds } from './laidInRounds.ts';
import type { NearStarts } from './nearStarts.ts';
import { rank } from './rank.ts';
import type { Scored } from './StartQuestion.ts';
import { apartOf } from './sameStart.ts';

/** Of the starts that may be laid the share that goes to those the search gave; the rest to moves from the best of them. */
const GIVEN = 0.5;
/** Starts that moves begin from, no two within so many ticks. */
const MOST_CLIMBED = 4;
const APART = TICKS_PER_INCH;

/** The best start when `most` are laid piece by piece: of those that the walls like nearly as well as any, and of what lies beside the best of these. */
export function bestLaid(
  { near, beside }: Pick<NearStarts, 'near' | 'beside'>,
  most: number,
  pattern: Pattern,
  lay: (choice: Choice) => Scored,
): Scored {
  const laid = rankScored(laidInRounds(near, Math.ceil(most * GIVEN), pattern, lay));
  return rankScored(movedOn(laid, { most: most - laid.length, pattern, beside, lay }))[0]!;
}

/** What a climb from starts that are laid asks for: `most` further starts to lay, and how. */
interface Climb extends Pick<NearStarts, 'beside'> {
  readonly most: number;
  readonly pattern: Pattern;
  readonly lay: (choice: Choice) => Scored;
}

/** What a climb from each of the best starts, which come first, leads to. */
export function movedOn(ranked: readonly Scored[], { most, pattern, beside, lay }: Climb): Scored[] {
  let left = most;
  return farApart(ranked, pattern).map((one) => {
    const found = climbed(one, left, beside, lay);
    left = found.left;
    return found.best;
  });
}

/** The first of starts that come best first, and those after it that stand apart from all before. */
export function farApart(ranked: readonly Scored[], pattern: Pattern): Scored[] {
  const kept: Scored[] = [];
  for (const one of ranked) {
    const isNear = ({ choice }: Scored) =>
      apartOf(choice.origin, one.choice.origin, pattern).every((off) => off < APART);
    if (kept.length < MOST_CLIMBED && !kept.some(isNear)) kept.push(one);
  }
  return kept;
}

/** Starts in the order of their candidates, the best first. */
export function rankScored(scored: readonly Scored[]): Scored[] {
  const order = rank(scored.map(({ candidate }) => candidate));
  return order.map((candidate) => scored.find((one) => one.candidate === candidate)!);
}
