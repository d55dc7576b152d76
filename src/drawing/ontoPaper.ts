import type { Box } from './boxes.ts';
import type { TextMark } from './Mark.ts';
import { textBox } from './textBox.ts';

/** Words moved as little as it takes to stand on the paper; where they are longer than it, their beginning does. */
export function ontoPaper(mark: TextMark, paper: Box): TextMark {
  const box = textBox(mark);
  const back = Math.max(0, box.right - paper.right);
  const down = Math.max(0, box.top - paper.top);
  const [x, y] = mark.at;
  return {
    ...mark,
    at: [
      x - back + Math.max(0, paper.left - box.left + back),
      y - down + Math.max(0, paper.bottom - box.bottom + down),
    ],
  };
}
