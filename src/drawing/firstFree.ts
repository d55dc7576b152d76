import { overlap, segmentMeets, within } from './boxes.ts';
import type { TextMark } from './Mark.ts';
import type { Taken } from './takenBy.ts';
import { textBox } from './textBox.ts';

/** The first of the same words at several places that touches nothing yet there; else the first clear of other words. */
export function firstFree(tries: readonly TextMark[], taken: Taken): TextMark {
  const { paper } = taken;
  const on = paper ? tries.filter((one) => within(textBox(one), paper)) : tries;
  const apart = on.filter((one) => !taken.boxes.some((box) => overlap(textBox(one), box, 0.5)));
  const free = apart.find((one) => !taken.lines.some(([a, b]) => segmentMeets(a, b, textBox(one))));
  return free ?? apart[0] ?? on[0] ?? tries[0]!;
}
