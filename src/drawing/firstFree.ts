import { overlap, segmentMeets, within } from './boxes.ts';
import type { TextMark } from './Mark.ts';
import type { Taken } from './takenBy.ts';
import { textBox } from './textBox.ts';

/** The first of the same words at several places that touches nothing yet there; else of those clear of other words, if any, the one on the fewest lines. */
export function firstApart(tries: readonly TextMark[], taken: Taken): TextMark | undefined {
  let best: { readonly one: TextMark; readonly count: number } | undefined;
  for (const one of tries) {
    const own = textBox(one);
    if (taken.paper && !within(own, taken.paper)) continue;
    if (taken.boxes.some((box) => overlap(own, box, 0.5))) continue;
    const count = taken.lines.filter(([a, b]) => segmentMeets(a, b, own)).length;
    if (count === 0) return one;
    if (!best || count < best.count) best = { one, count };
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
