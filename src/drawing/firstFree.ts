import { overlap, segmentMeets, within } from './boxes.ts';
import type { TextMark } from './Mark.ts';
import type { Taken } from './takenBy.ts';
import { textBox } from './textBox.ts';

/** The first of the same words at several places that touches nothing yet there; else the first clear of other words, if any. */
export function firstApart(tries: readonly TextMark[], taken: Taken): TextMark | undefined {
  const on = onPaper(tries, taken);
  const apart = on.filter((one) => !taken.boxes.some((box) => overlap(textBox(one), box, 0.5)));
  const free = apart.find((one) => !taken.lines.some(([a, b]) => segmentMeets(a, b, textBox(one))));
  return free ?? apart[0];
}

/** As `firstApart`, for words that must stand somewhere: where nothing is clear, the first place on the paper. */
export function firstFree(tries: readonly TextMark[], taken: Taken): TextMark {
  return firstApart(tries, taken) ?? onPaper(tries, taken)[0] ?? tries[0]!;
}

function onPaper(tries: readonly TextMark[], { paper }: Taken): readonly TextMark[] {
  return paper ? tries.filter((one) => within(textBox(one), paper)) : tries;
}
