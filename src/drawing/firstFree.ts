import { overlap, segmentMeets, within } from './boxes.ts';
import type { TextMark } from './Mark.ts';
import type { Taken } from './takenBy.ts';
import { textBox } from './textBox.ts';

/** The first of the same words at several places that touches nothing yet there; else of those clear of other words, if any, the one on the fewest lines. */
export function firstApart(tries: readonly TextMark[], taken: Taken): TextMark | undefined {
  const on = onPaper(tries, taken);
  const apart = on.filter((one) => !taken.boxes.some((box) => overlap(textBox(one), box, 0.5)));
  return fewest(apart, (one) => taken.lines.filter(([a, b]) => segmentMeets(a, b, textBox(one))).length);
}

/** The first that counts nothing, else the first that counts the least. */
function fewest<T>(all: readonly T[], count: (one: T) => number): T | undefined {
  let best: { readonly one: T; readonly count: number } | undefined;
  for (const one of all) {
    const counted = count(one);
    if (counted === 0) return one;
    if (!best || counted < best.count) best = { one, count: counted };
  }
  return best?.one;
}

/** As `firstApart`, for words that must stand somewhere: where nothing is clear, the first place on the paper. */
export function firstFree(tries: readonly TextMark[], taken: Taken): TextMark {
  return firstApart(tries, taken) ?? onPaper(tries, taken)[0] ?? tries[0]!;
}

function onPaper(tries: readonly TextMark[], { paper }: Taken): readonly TextMark[] {
  return paper ? tries.filter((one) => within(textBox(one), paper)) : tries;
}
