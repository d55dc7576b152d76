import { TICKS_PER_INCH } from '../../measure/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { Choice } from './Choice.ts';
import { rank } from './rank.ts';
import type { Scored } from './StartQuestion.ts';
import { apartOf } from './sameStart.ts';

/** Starts nearer than this to one that is laid already, in ticks each way, wait for those that are farther from all. */
const APART = [2 * TICKS_PER_INCH, TICKS_PER_INCH / 2, 0] as const;
/** Of the starts that may be laid the share that goes to places far from one another; the rest goes to those beside the best of them. */
const FIRST = 0.5;
/** Shifts nearer than this, in ticks, are one: they stay as given. */
const SAME_SHIFT = TICKS_PER_INCH / 16;
/** Places on an axis nearer than this, in ticks, are one. */
const SAME = 4;

/**
 * Lays starts until so many are laid: first such as lie far from one another, those nearest to balance before others; then round
 * after round those that keep one place of the best so far and change the other, because what the pieces at one wall are hardly
 * hangs on the place along the other axis.
 */
export function laidInRounds(
  choices: readonly Choice[],
  most: number,
  pattern: Pattern,
  lay: (choice: Choice) => Scored,
): readonly Scored[] {
  const shift = (choice: Choice) => Math.round(choice.shift / SAME_SHIFT);
  const sorted = [...choices].sort((a, b) => shift(a) - shift(b));
  if (sorted.length <= most) return sorted.map(lay);
  const laid = spread(sorted, Math.ceil(most * FIRST), pattern).map(lay);
  while (laid.length < most) {
    const { origin } = bestOf(laid).choice;
    const left = sorted.filter((one) => !laid.some(({ choice }) => choice === one));
    const beside = left.filter((one) => apartOf(one.origin, origin, pattern).some((off) => off <= SAME));
    const next = spread(beside, Math.min(most - laid.length, ROUND), pattern);
    if (next.length === 0) break;
    laid.push(...next.map(lay));
  }
  return laid;
}

/** Starts laid before the best of all is asked for again. */
const ROUND = 8;

function bestOf(laid: readonly Scored[]): Scored {
  const [best] = rank(laid.map(({ candidate }) => candidate));
  return laid.find(({ candidate }) => candidate === best)!;
}

/** So many of a list at most: of those that are nearly one place the first, while others are left. */
function spread(sorted: readonly Choice[], most: number, pattern: Pattern): readonly Choice[] {
  const kept: Choice[] = [];
  for (const apart of APART) {
    for (const one of sorted) {
      const isNear = (other: Choice) =>
        other === one || apartOf(one.origin, other.origin, pattern).every((off) => off < apart);
      if (kept.length < most && !kept.some(isNear)) kept.push(one);
    }
  }
  return kept;
}
