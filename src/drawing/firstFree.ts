import { type Box, overlap } from './boxes.ts';
import type { TextMark } from './Mark.ts';
import { textBox } from './textBox.ts';

/** The first of the same words at several places that touches nothing yet there; the first of all where every one does. */
export function firstFree(tries: readonly TextMark[], taken: readonly Box[]): TextMark {
  const free = tries.find((one) => !taken.some((box) => overlap(textBox(one), box, 0.5)));
  return free ?? tries[0]!;
}
